package rungwork.kernel;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import io.github.spencerpark.jupyter.messages.request.HistoryRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** The cells of this session that clients may ask for again. */
final class History {
  private static final int SESSION = 1;

  private final List<Entry> entries = new ArrayList<>();

  private record Entry(int count, String input, String output) {}

  void add(Cell cell, String output) {
    entries.add(new Entry(cell.count(), cell.source(), output));
  }

  JsonObject reply(HistoryRequest request) {
    JsonArray history = new JsonArray();
    for (Entry entry : found(request)) {
      JsonArray row = new JsonArray();
      row.add(SESSION);
      row.add(entry.count());
      if (request.includeOutput()) {
        JsonArray pair = new JsonArray();
        pair.add(entry.input());
        pair.add(entry.output());
        row.add(pair);
      } else {
        row.add(entry.input());
      }
      history.add(row);
    }
    JsonObject reply = new JsonObject();
    reply.addProperty("status", "ok");
    reply.add("history", history);
    return reply;
  }

  private List<Entry> found(HistoryRequest request) {
    if (request instanceof HistoryRequest.Tail tail) {
      return last(entries, tail.getMaxReturnLength());
    }
    if (request instanceof HistoryRequest.Range range) {
      int stop = range.getStop() > 0 ? range.getStop() : Integer.MAX_VALUE;
      return entries.stream()
          .filter(entry -> range.getSessionIndex() == 0 || range.getSessionIndex() == SESSION)
          .filter(entry -> entry.count() >= range.getStart() && entry.count() < stop)
          .toList();
    }
    return request instanceof HistoryRequest.Search search ? searched(search) : List.of();
  }

  private List<Entry> searched(HistoryRequest.Search search) {
    Pattern pattern = glob(search.getPattern());
    List<Entry> matches =
        entries.stream().filter(entry -> pattern.matcher(entry.input()).matches()).toList();
    if (search.filterUnique()) {
      Map<String, Entry> latest = new LinkedHashMap<>();
      for (Entry entry : matches) {
        latest.remove(entry.input());
        latest.put(entry.input(), entry);
      }
      matches = List.copyOf(latest.values());
    }
    return last(matches, search.getMaxReturnLength());
  }

  /** The last n entries; all of them where no number is given. */
  private static List<Entry> last(List<Entry> all, int n) {
    return n <= 0 ? all : all.subList(Math.max(0, all.size() - n), all.size());
  }

  /** A pattern in which * stands for any text and ? for any character. */
  private static Pattern glob(String pattern) {
    String quoted = Pattern.quote(pattern).replace("*", "\\E.*\\Q").replace("?", "\\E.\\Q");
    return Pattern.compile(quoted, Pattern.DOTALL);
  }
}
