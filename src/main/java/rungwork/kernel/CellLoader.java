package rungwork.kernel;

import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.security.CodeSource;
import java.util.HashMap;
import java.util.Map;
import jdk.jshell.execution.LoaderDelegate;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;
import jdk.jshell.spi.ExecutionControl.ClassInstallException;
import jdk.jshell.spi.ExecutionControl.InternalException;

/**
 * Loads the classes that the cells' snippets become. Its parent is the library's own loader, so
 * that cells and library share one copy of every library class.
 */
final class CellLoader implements LoaderDelegate {
  private final SnippetLoader loader;
  private final Map<String, Class<?>> loaded = new HashMap<>();

  CellLoader(ClassLoader parent) {
    loader = new SnippetLoader(parent);
  }

  ClassLoader loader() {
    return loader;
  }

  @Override
  public void load(ClassBytecodes[] classes) throws ClassInstallException {
    boolean[] done = new boolean[classes.length];
    classesRedefined(classes);
    try {
      for (int i = 0; i < classes.length; i++) {
        Class<?> type = loader.loadClass(classes[i].name());
        type.getDeclaredMethods(); // links the class as far as its members
        loaded.put(classes[i].name(), type);
        done[i] = true;
      }
    } catch (ClassNotFoundException | LinkageError e) {
      throw new ClassInstallException("load: " + e.getMessage(), done);
    }
  }

  @Override
  public void classesRedefined(ClassBytecodes[] classes) {
    for (ClassBytecodes bytes : classes) {
      loader.bytecodes.put(bytes.name(), bytes.bytecodes());
    }
  }

  @Override
  public void addToClasspath(String path) throws InternalException {
    for (String entry : path.split(File.pathSeparator)) {
      try {
        loader.addURL(new File(entry).toURI().toURL());
      } catch (MalformedURLException e) {
        throw new InternalException(e.toString());
      }
    }
  }

  @Override
  public Class<?> findClass(String name) throws ClassNotFoundException {
    if (!loaded.containsKey(name)) {
      throw new ClassNotFoundException(name);
    }
    return loaded.get(name);
  }

  private static final class SnippetLoader extends URLClassLoader {
    private final Map<String, byte[]> bytecodes = new HashMap<>();

    private SnippetLoader(ClassLoader parent) {
      super(new URL[0], parent);
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
      if (!bytecodes.containsKey(name)) {
        return super.findClass(name);
      }
      byte[] bytes = bytecodes.get(name);
      return defineClass(name, bytes, 0, bytes.length, (CodeSource) null);
    }

    @Override
    protected void addURL(URL url) {
      super.addURL(url);
    }
  }
}
