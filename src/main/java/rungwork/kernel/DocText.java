package rungwork.kernel;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EndElementTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.StartElementTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.util.DocTreeScanner;
import com.sun.source.util.DocTrees;
import com.sun.source.util.TreePath;
import java.util.Map;
import java.util.Optional;

/** A documentation comment as plain text: no tags, no markup, one line a parameter. */
final class DocText {
  private static final Map<String, String> ENTITIES =
      Map.of("lt", "<", "gt", ">", "amp", "&", "quot", "\"", "nbsp", " ");

  private DocText() {}

  /** The text of a comment's inside, without the leading stars. */
  static String of(String comment) {
    Syntax.Parsed parsed = Syntax.parsed("/**\n" + comment + "\n*/\nclass A {}");
    DocTrees docs = DocTrees.instance(parsed.task());
    TreePath type = TreePath.getPath(parsed.unit(), parsed.unit().getTypeDecls().get(0));
    return Optional.ofNullable(docs.getDocCommentTree(type))
        .map(DocText::read)
        .orElse(comment.strip());
  }

  private static String read(DocCommentTree comment) {
    StringBuilder text = new StringBuilder();
    Reader reader = new Reader();
    reader.scan(comment.getFullBody(), text);
    text.append("\n\n");
    reader.scan(comment.getBlockTags(), text);
    return text.toString().replaceAll("[ \t]+\n", "\n").replaceAll("\n{3,}", "\n\n").strip();
  }

  private static final class Reader extends DocTreeScanner<Void, StringBuilder> {
    private boolean asWritten;

    @Override
    public Void visitText(TextTree node, StringBuilder text) {
      text.append(asWritten ? node.getBody() : node.getBody().replaceAll("\\s+", " "));
      return null;
    }

    @Override
    public Void visitLiteral(LiteralTree node, StringBuilder text) {
      text.append(node.getBody().getBody().strip());
      return null;
    }

    @Override
    public Void visitLink(LinkTree node, StringBuilder text) {
      if (node.getLabel().isEmpty()) {
        String target = node.getReference().getSignature();
        text.append(target.replaceAll("^#|^([a-z]\\w*\\.)+", "").replace('#', '.'));
      } else {
        scan(node.getLabel(), text);
      }
      return null;
    }

    @Override
    public Void visitStartElement(StartElementTree node, StringBuilder text) {
      String name = node.getName().toString();
      asWritten = asWritten || name.equals("pre");
      text.append(
          switch (name) {
            case "p", "pre", "table", "ul", "ol", "dl" -> "\n\n";
            case "li", "dt", "tr", "br" -> name.equals("li") ? "\n  * " : "\n";
            default -> "";
          });
      return null;
    }

    @Override
    public Void visitEndElement(EndElementTree node, StringBuilder text) {
      asWritten = asWritten && !node.getName().contentEquals("pre");
      text.append(node.getName().toString().matches("pre|table|ul|ol|dl") ? "\n\n" : "");
      return null;
    }

    @Override
    public Void visitEntity(EntityTree node, StringBuilder text) {
      String name = node.getName().toString();
      text.append(ENTITIES.getOrDefault(name, node.toString()));
      return null;
    }

    @Override
    public Void visitParam(ParamTree node, StringBuilder text) {
      text.append("\n  " + node.getName() + ": ");
      return scan(node.getDescription(), text);
    }

    @Override
    public Void visitReturn(ReturnTree node, StringBuilder text) {
      text.append(node.getKind() == DocTree.Kind.RETURN ? "\nreturns " : "");
      return scan(node.getDescription(), text);
    }

    @Override
    public Void visitThrows(ThrowsTree node, StringBuilder text) {
      text.append("\nthrows " + node.getExceptionName().getSignature() + " ");
      return scan(node.getDescription(), text);
    }
  }
}
