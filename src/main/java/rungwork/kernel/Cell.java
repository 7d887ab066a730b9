package rungwork.kernel;

/**
 * One cell to run.
 *
 * @param count the number shown beside the cell, by which errors name it
 * @param source its text
 */
public record Cell(int count, String source) {}
