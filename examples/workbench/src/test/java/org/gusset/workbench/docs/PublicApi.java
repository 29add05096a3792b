package org.gusset.workbench.docs;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.module.ModuleDescriptor;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a module offers: every public type of its exported packages with what a caller may use of it, one line each. */
final class PublicApi {
    private final List<String> lines = new ArrayList<>();

    private PublicApi() {}

    /** Of the module that this type belongs to, as text. */
    static String of(Class<?> type) {
        try {
            Path place = Path.of(
                    type.getProtectionDomain().getCodeSource().getLocation().toURI());
            PublicApi api = new PublicApi();
            if (Files.isDirectory(place)) {
                api.module(place, type.getClassLoader());
            } else {
                try (FileSystem jar = FileSystems.newFileSystem(URI.create("jar:" + place.toUri()), Map.of())) {
                    api.module(jar.getPath("/"), type.getClassLoader());
                }
            }
            return String.join("\n", api.lines) + "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private void module(Path root, ClassLoader loader) throws IOException {
        ModuleDescriptor module;
        try (InputStream in = Files.newInputStream(root.resolve("module-info.class"))) {
            module = ModuleDescriptor.read(in);
        }
        lines.add("module " + module.name());
        List<String> packages = module.exports().stream()
                .filter(e -> !e.isQualified())
                .map(ModuleDescriptor.Exports::source)
                .sorted()
                .toList();
        for (String name : packages) {
            lines.add("");
            lines.add("package " + name);
            try (Stream<Path> files = Files.list(root.resolve(name.replace('.', '/')))) {
                files.map(f -> f.getFileName().toString())
                        .filter(f -> f.endsWith(".class") && !f.equals("package-info.class"))
                        .map(f -> loaded(loader, name + "." + f.substring(0, f.length() - 6)))
                        .filter(PublicApi::offered)
                        .sorted((a, b) -> a.getName().compareTo(b.getName()))
                        .forEach(this::type);
            }
        }
    }

    private static Class<?> loaded(ClassLoader loader, String name) {
        try {
            return Class.forName(name, false, loader);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean offered(Class<?> type) {
        return offered(type.getModifiers())
                && !type.isAnonymousClass()
                && !type.isSynthetic()
                && (type.getDeclaringClass() == null || offered(type.getDeclaringClass()));
    }

    private static boolean offered(int modifiers) {
        return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
    }

    private void type(Class<?> type) {
        StringBuilder head = new StringBuilder("  ").append(words(type)).append(named(type));
        if (type.isRecord()) {
            head.append(Arrays.stream(type.getRecordComponents())
                    .map(PublicApi::component)
                    .collect(Collectors.joining(", ", "(", ")")));
        }
        Type above = type.getGenericSuperclass();
        if (above != null && above != Object.class && !type.isRecord() && !type.isEnum()) {
            head.append(" extends ").append(brief(above));
        }
        if (type.getInterfaces().length > 0) {
            head.append(type.isInterface() ? " extends " : " implements ")
                    .append(Arrays.stream(type.getGenericInterfaces())
                            .map(PublicApi::brief)
                            .collect(Collectors.joining(", ")));
        }
        if (type.isSealed()) {
            head.append(Arrays.stream(type.getPermittedSubclasses())
                    .map(PublicApi::brief)
                    .sorted()
                    .collect(Collectors.joining(", ", " permits ", "")));
        }
        lines.add(head.toString());
        members(type).stream().sorted().forEach(line -> lines.add("    " + line));
    }

    private static List<String> members(Class<?> type) {
        List<String> members = new ArrayList<>();
        for (Field field : type.getDeclaredFields()) {
            if (offered(field.getModifiers()) && !field.isSynthetic()) {
                members.add(
                        field.isEnumConstant()
                                ? field.getName()
                                : still(field.getModifiers()) + field.getName() + ": " + brief(field.getGenericType()));
            }
        }
        for (Constructor<?> constructor : type.getDeclaredConstructors()) {
            if (offered(constructor.getModifiers()) && !constructor.isSynthetic() && !type.isRecord()) {
                members.add("new " + called(constructor));
            }
        }
        for (Method method : type.getDeclaredMethods()) {
            if (offered(method.getModifiers()) && !method.isSynthetic() && !given(type, method)) {
                members.add(still(method.getModifiers())
                        + (type.isInterface() && Modifier.isAbstract(method.getModifiers()) ? "abstract " : "")
                        + method.getName()
                        + called(method)
                        + ": "
                        + brief(method.getGenericReturnType()));
            }
        }
        return members;
    }

    /** What the language itself gives: accessors of a record, the two methods of an enum, and the three of every object. */
    private static boolean given(Class<?> type, Method method) {
        String name = method.getName();
        int count = method.getParameterCount();
        if (type.isRecord()
                && count == 0
                && Arrays.stream(type.getRecordComponents())
                        .anyMatch(c -> c.getName().equals(name))) {
            return true;
        }
        if (type.isEnum() && ((name.equals("values") && count == 0) || (name.equals("valueOf") && count == 1))) {
            return true;
        }
        return (name.equals("equals") && count == 1)
                || ((name.equals("hashCode") || name.equals("toString")) && count == 0);
    }

    private static String component(RecordComponent component) {
        return component.getName() + ": " + brief(component.getGenericType());
    }

    private static String called(Executable executable) {
        String types = Arrays.stream(executable.getTypeParameters())
                .map(PublicApi::brief)
                .collect(Collectors.joining(", "));
        String arguments = Arrays.stream(executable.getGenericParameterTypes())
                .map(PublicApi::brief)
                .collect(Collectors.joining(", "));
        String thrown = Arrays.stream(executable.getGenericExceptionTypes())
                .map(PublicApi::brief)
                .collect(Collectors.joining(", "));
        return (types.isEmpty() ? "" : "<" + types + ">")
                + "("
                + arguments
                + ")"
                + (thrown.isEmpty() ? "" : " throws " + thrown);
    }

    private static String still(int modifiers) {
        return Modifier.isStatic(modifiers) ? "static " : "";
    }

    private static String words(Class<?> type) {
        String kind = type.isAnnotation()
                ? "annotation "
                : type.isInterface() ? "interface " : type.isEnum() ? "enum " : type.isRecord() ? "record " : "class ";
        boolean open = !type.isInterface() && !Modifier.isFinal(type.getModifiers()) && !type.isEnum();
        return (type.isSealed() ? "sealed " : open ? "open " : "")
                + (Modifier.isAbstract(type.getModifiers()) && !type.isInterface() && !type.isEnum() ? "abstract " : "")
                + kind;
    }

    private static String named(Class<?> type) {
        String types =
                Arrays.stream(type.getTypeParameters()).map(PublicApi::brief).collect(Collectors.joining(", "));
        return type.getName().substring(type.getPackageName().length() + 1).replace('$', '.')
                + (types.isEmpty() ? "" : "<" + types + ">");
    }

    /** A type without the names of packages. */
    private static String brief(Type type) {
        return type.getTypeName()
                .replaceAll("[a-z][\\w]*\\.(?=[\\w.]*[A-Z])", "")
                .replace('$', '.');
    }
}
