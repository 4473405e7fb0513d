package dev.quoin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * What the build makes of a jar ({@code src/build/RenewClasses.java}): its records compare as the compiler's do, its lambdas
 * and old classes still do what they did. Here it is all of the program's classes, a few records and lambdas made for the
 * purpose, and a class of 1996's kind.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RenewClassesTest {
    /** No components. */
    record None() {}

    /** One component of each primitive type. */
    record Primitives(boolean z, char c, byte b, short s, int i, long j, float f, double d) {}

    /** Generic, array and nested components. */
    record Things<T extends Comparable<T>>(
            T one, List<? super T> many, int[] numbers, String[][] words, Record inner) {}

    /** With an equality of its own. */
    record Own(int number, String note) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Own own && number == own.number;
        }

        @Override
        public int hashCode() {
            return number;
        }
    }

    /** With methods that are called alike. */
    record Overloaded(int number) {
        boolean equals(Overloaded other, int add) {
            return new Overloaded(number + add).equals(other);
        }
    }

    private static final String OLD = "dev.quoin.Old";

    private Path jar;
    private Path renewal;
    private Path renewed;
    private Path more;
    private URLClassLoader classes;

    @BeforeAll
    void renew(@TempDir Path folder) throws Exception {
        jar = folder.resolve("before.jar");
        renewal = folder.resolve("renewal");
        renewed = folder.resolve("after.jar");
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
            put(out, OLD.replace('.', '/') + ".class", oldClass());
            putAll(out, Path.of("target/classes"), "");
            putAll(out, Path.of("target/test-classes"), "RenewClassesTest");
            putAll(out, Path.of("target/test-classes"), "LambdasOfAllKinds");
        }
        more = folder.resolve("more");
        Files.createDirectories(more.resolve("dev/quoin"));
        Files.writeString(more.resolve("dev/quoin/table.bin"), "more");
        compile();
        renewTo(renewed);
        List<URL> path = new ArrayList<>(List.of(renewed.toUri().toURL()));
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            path.add(Path.of(entry).toUri().toURL());
        }
        classes = new URLClassLoader(path.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
    }

    private void compile() throws IOException {
        List<String> arguments =
                new ArrayList<>(List.of("-cp", System.getProperty("java.class.path"), "-d", renewal.toString()));
        try (Stream<Path> sources = Files.list(Path.of("src/build"))) {
            sources.map(Path::toString).forEach(arguments::add);
        }
        assertEquals(0, ToolProvider.getSystemJavaCompiler().run(null, null, null, arguments.toArray(String[]::new)));
    }

    private void renewTo(Path file) throws IOException, InterruptedException {
        Process build = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        renewal + File.pathSeparator + System.getProperty("java.class.path"),
                        "RenewClasses",
                        jar.toString(),
                        file.toString(),
                        more.toString())
                .inheritIO()
                .start();
        assertEquals(0, build.waitFor());
    }

    private static void putAll(JarOutputStream out, Path root, String name) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(file -> file.toString().endsWith(".class")
                            && file.getFileName().toString().startsWith(name))
                    .toList()) {
                put(out, root.relativize(file).toString().replace(File.separatorChar, '/'), Files.readAllBytes(file));
            }
        }
    }

    private static void put(JarOutputStream out, String name, byte[] bytes) throws IOException {
        out.putNextEntry(new JarEntry(name));
        out.write(bytes);
    }

    /** A record of the renewed jar, or of the class path. */
    private static Object make(ClassLoader from, Class<?> type, Object... components) {
        try {
            var maker = from.loadClass(type.getName()).getDeclaredConstructors()[0];
            maker.setAccessible(true);
            return maker.newInstance(components);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    /** Holds each two of some records to what the compiler makes of them. */
    private void assertCompare(Class<?> type, List<Object[]> some) {
        ClassLoader own = getClass().getClassLoader();
        for (Object[] first : some) {
            Object here = make(own, type, first);
            Object there = make(classes, type, first);
            assertEquals(here.hashCode(), there.hashCode(), Arrays.deepToString(first));
            for (Object stranger : new Object[] {"text", null}) {
                assertEquals(here.equals(stranger), there.equals(stranger));
            }
            for (Object[] second : some) {
                assertEquals(
                        here.equals(make(own, type, second)),
                        there.equals(make(classes, type, second)),
                        () -> Arrays.deepToString(first) + " and " + Arrays.deepToString(second));
            }
        }
    }

    @Test
    void recordsOfNoComponentAreAllEqual() {
        assertCompare(None.class, List.<Object[]>of(new Object[0]));
    }

    @Test
    void eachPrimitiveCountsAndNumbersThatAreNoneEqualThemselves() {
        Object[] plain = {true, 'c', (byte) -1, (short) 300, 1 << 30, 1L << 40, 1.5f, -0.25};
        Object[] other = {false, '\uffff', (byte) 1, (short) -300, -1, -1L, Float.NaN, Double.NaN};
        Object[] zeros = {true, 'c', (byte) 0, (short) 0, 0, 0L, -0f, -0d};
        List<Object[]> all = new ArrayList<>(List.of(plain, other, zeros));
        for (int i = 0; i < plain.length; i++) {
            for (Object value : new Object[] {other[i], zeros[i]}) {
                Object[] changed = plain.clone();
                changed[i] = value;
                all.add(changed);
            }
        }
        all.add(new Object[] {true, 'c', (byte) 0, (short) 0, 0, 0L, 0f, 0d});
        assertCompare(Primitives.class, all);
    }

    @Test
    void objectsCountByTheirOwnEqualityArraysByIdentityAndNothingIsEqualToNothing() {
        int[] numbers = {1, 2};
        String[][] words = {{"a"}, {}};
        Record inner = new Own(1, "");
        assertCompare(
                Things.class,
                List.of(
                        new Object[] {"a", List.of("b"), numbers, words, inner},
                        new Object[] {new String("a"), new ArrayList<>(List.of("b")), numbers, words, new Own(1, "x")},
                        new Object[] {"a", List.of("b"), numbers.clone(), words, inner},
                        new Object[] {"a", List.of("b"), numbers, words.clone(), inner},
                        new Object[] {"a", List.of("b"), numbers, words, new None()},
                        new Object[] {"b", null, null, null, null},
                        new Object[] {null, null, null, null, null}));
    }

    @Test
    void anEqualityThatIsWrittenOutStays() {
        assertCompare(Own.class, List.of(new Object[] {1, "a"}, new Object[] {1, "b"}, new Object[] {2, "a"}));
        assertCompare(Overloaded.class, List.of(new Object[] {1}, new Object[] {2}));
    }

    static Stream<String> kindsOfLambdas() {
        return Arrays.stream(LambdasOfAllKinds.class.getDeclaredMethods())
                .filter(method -> !Modifier.isPrivate(method.getModifiers()))
                .map(Method::getName);
    }

    @ParameterizedTest
    @MethodSource("kindsOfLambdas")
    void lambdasOfAllKindsDoWhatTheyDid(String kind) throws Exception {
        Method renewed = classes.loadClass(LambdasOfAllKinds.class.getName()).getDeclaredMethod(kind);
        renewed.setAccessible(true);
        assertEquals(LambdasOfAllKinds.class.getDeclaredMethod(kind).invoke(null), renewed.invoke(null));
    }

    /** Of a record's methods toString is left, and of lambdas those that are serialized or need bridges: the program has none. */
    @Test
    void onlyWhatIsLeftOnPurposeIsLinkedAtItsFirstCallAndAllClassesPassTheVerifier() throws Exception {
        Map<String, Set<String>> left = new HashMap<>();
        int lambdas = 0;
        try (var zip = new ZipFile(renewed.toFile())) {
            for (var entry : zip.stream()
                    .filter(file -> file.getName().endsWith(".class"))
                    .toList()) {
                ClassReader reader;
                try (InputStream in = zip.getInputStream(entry)) {
                    reader = new ClassReader(in);
                }
                Class<?> loaded = Class.forName(reader.getClassName().replace('/', '.'), true, classes);
                for (String what : linkedAtFirstCall(reader)) {
                    left.computeIfAbsent(what, key -> new HashSet<>())
                            .add(loaded.getNestHost().getSimpleName());
                }
                lambdas += loaded.isSynthetic() ? 1 : 0;
            }
        }
        assertTrue(left.remove("toString").size() > 100, "records");
        assertEquals(Map.of("altMetafactory", Set.of("LambdasOfAllKinds")), left);
        assertTrue(lambdas > 1000, lambdas + " lambdas");
    }

    /** What Java puts together at its first call in a class: methods of records, and by the name of what makes them, lambdas. */
    private static Set<String> linkedAtFirstCall(ClassReader reader) {
        Set<String> found = new HashSet<>();
        reader.accept(
                new ClassVisitor(Opcodes.ASM9) {
                    @Override
                    public MethodVisitor visitMethod(
                            int access, String name, String descriptor, String signature, String[] exceptions) {
                        return new MethodVisitor(Opcodes.ASM9) {
                            @Override
                            public void visitInvokeDynamicInsn(
                                    String called, String type, Handle bootstrap, Object... arguments) {
                                boolean ofRecord = bootstrap.getOwner().endsWith("ObjectMethods");
                                found.add(ofRecord ? called : bootstrap.getName());
                            }
                        };
                    }
                },
                0);
        return found;
    }

    @Test
    void theSameJarGivesTheSameBytes() throws Exception {
        Path again = renewed.resolveSibling("again.jar");
        renewTo(again);
        assertEquals(-1, Files.mismatch(renewed, again));
    }

    @Test
    void theFilesOfAFolderStandBehindTheJarsOwn() throws Exception {
        try (InputStream table = classes.getResourceAsStream("dev/quoin/table.bin")) {
            assertEquals("more", new String(table.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void aClassFromBeforeStackMapsStillRuns() throws Exception {
        Class<?> old = classes.loadClass(OLD);
        assertEquals(42, old.getMethod("doubled", int.class).invoke(null, 21));
        try (InputStream bytes = classes.getResourceAsStream(OLD.replace('.', '/') + ".class")) {
            assertEquals(Opcodes.V1_8, new ClassReader(bytes).readShort(6));
        }
    }

    /** Doubles a number in a subroutine, which classes may have had until Java 6. */
    private static byte[] oldClass() {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        writer.visit(Opcodes.V1_1, Opcodes.ACC_PUBLIC, OLD.replace('.', '/'), null, "java/lang/Object", null);
        MethodVisitor code = writer.visitMethod(Opcodes.ACC_PUBLIC | Opcodes.ACC_STATIC, "doubled", "(I)I", null, null);
        Label subroutine = new Label();
        code.visitCode();
        code.visitJumpInsn(Opcodes.JSR, subroutine);
        code.visitVarInsn(Opcodes.ILOAD, 0);
        code.visitInsn(Opcodes.IRETURN);
        code.visitLabel(subroutine);
        code.visitVarInsn(Opcodes.ASTORE, 1);
        code.visitVarInsn(Opcodes.ILOAD, 0);
        code.visitInsn(Opcodes.ICONST_2);
        code.visitInsn(Opcodes.IMUL);
        code.visitVarInsn(Opcodes.ISTORE, 0);
        code.visitVarInsn(Opcodes.RET, 1);
        code.visitMaxs(0, 0);
        code.visitEnd();
        writer.visitEnd();
        return writer.toByteArray();
    }
}
