package rungwork.kernel;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.TreePath;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds the documentation comment of what a signature names, in the sources of an index. */
final class SourceDocs {
  private final SourceIndex index;

  SourceDocs(SourceIndex index) {
    this.index = index;
  }

  /** The full names of the public types that have this simple name. */
  List<String> named(String simpleName) {
    return index.publicTypes(simpleName);
  }

  /**
   * What a signature names.
   *
   * @param path simple names from the outermost type inwards; the last may be a member
   * @param parameters simple names of the parameters' types; none where there are no brackets
   */
  private record Wanted(List<String> path, Optional<List<String>> parameters) {
    private static final Pattern SIGNATURE =
        Pattern.compile("(?:.* )?([\\w.$]+)(?:\\(([^()]*)\\))?(?::.*)?");

    /** Reads a signature as the JDK's analysis writes it. */
    static Optional<Wanted> of(String signature) {
      String plain = withoutTypeArguments(signature).replaceAll(" throws .*", "");
      Matcher parts = SIGNATURE.matcher(plain);
      if (!parts.matches()) {
        return Optional.empty();
      }
      List<String> path =
          Arrays.stream(parts.group(1).replaceAll("^([a-z]\\w*\\.)+(?=[A-Z])", "").split("\\."))
              .toList();
      return Optional.of(
          new Wanted(path, Optional.ofNullable(parts.group(2)).map(SourceDocs::types)));
    }

    private String last() {
      return path.get(path.size() - 1);
    }
  }

  private static List<String> types(String parameters) {
    return parameters.isBlank()
        ? List.of()
        : Arrays.stream(parameters.split(",")).map(SourceDocs::type).toList();
  }

  /** The simple name of a parameter's type, written as "type name". */
  private static String type(String parameter) {
    return simple(parameter.strip().replaceAll(" \\w+$", ""));
  }

  private static String simple(String type) {
    return withoutTypeArguments(type).replaceAll("(\\w+\\.)+(?=\\w)", "").replace("[]", "...");
  }

  private static String withoutTypeArguments(String text) {
    String shorter = text.replaceAll("<[^<>]*>", "");
    return shorter.equals(text) ? text : withoutTypeArguments(shorter);
  }

  /** The comment as text to read, if a source holds one. */
  Optional<String> of(String signature) {
    return Wanted.of(signature)
        .flatMap(
            wanted ->
                index.texts(wanted.path().get(0)).stream()
                    .flatMap(source -> comment(source, wanted).stream())
                    .findFirst());
  }

  private static Optional<String> comment(String source, Wanted wanted) {
    Syntax.Parsed parsed = Syntax.parsed(source);
    Found found = new Found(parsed.unit(), DocTrees.instance(parsed.task()));
    List<? extends Tree> types = parsed.unit().getTypeDecls();
    return found.in(types, wanted, 0);
  }

  /** The way into one source file. */
  private record Found(CompilationUnitTree unit, DocTrees docs) {
    private Optional<String> in(List<? extends Tree> members, Wanted wanted, int depth) {
      String name = wanted.path().get(depth);
      Optional<ClassTree> type =
          all(members, ClassTree.class)
              .filter(each -> each.getSimpleName().contentEquals(name))
              .findFirst();
      if (depth + 1 < wanted.path().size()) {
        return type.flatMap(
            outer -> in(outer.getMembers(), wanted, depth + 1).or(() -> component(outer, wanted)));
      }
      return wanted.parameters().isEmpty()
          ? type.flatMap(this::comment).or(() -> field(members, name))
          : type.flatMap(made -> method(made.getMembers(), "<init>", wanted))
              .or(() -> type.flatMap(this::comment))
              .or(() -> method(members, name, wanted));
    }

    private static <T extends Tree> Stream<T> all(List<? extends Tree> trees, Class<T> kind) {
      return trees.stream().filter(kind::isInstance).map(kind::cast);
    }

    private Optional<String> field(List<? extends Tree> members, String name) {
      return all(members, VariableTree.class)
          .filter(each -> each.getName().contentEquals(name))
          .findFirst()
          .flatMap(this::comment);
    }

    private Optional<String> method(List<? extends Tree> members, String name, Wanted wanted) {
      Predicate<MethodTree> fits =
          each ->
              each.getParameters().stream()
                  .map(parameter -> simple(parameter.getType().toString()))
                  .toList()
                  .equals(wanted.parameters().orElseThrow());
      return all(members, MethodTree.class)
          .filter(each -> each.getName().contentEquals(name))
          .filter(fits)
          .findFirst()
          .flatMap(this::comment);
    }

    /** A record documents its components in its own comment. */
    private Optional<String> component(ClassTree type, Wanted wanted) {
      Pattern tag = Pattern.compile("@param\\s+" + Pattern.quote(wanted.last()) + "\\s+([^@]+)");
      return raw(type)
          .map(tag::matcher)
          .filter(Matcher::find)
          .map(found -> DocText.of(found.group(1)));
    }

    private Optional<String> comment(Tree tree) {
      return raw(tree).map(DocText::of);
    }

    private Optional<String> raw(Tree tree) {
      return Optional.ofNullable(docs.getDocComment(TreePath.getPath(unit, tree)));
    }
  }
}
