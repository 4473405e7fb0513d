import java.io.File;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.commons.JSRInlinerAdapter;
import org.objectweb.asm.tree.ClassNode;

/**
 * Rewrites a jar for a quick start. A class-data archive passes over class files older than Java 6, which some libraries
 * still have: they are raised to Java 8, with the stack maps that this asks for. What Java would put together at the first
 * call of a record's {@code equals} and {@code hashCode}, and of each lambda and method reference of the program itself, is
 * spelt out: the archive holds such a class as any other, while a lambda would be linked anew at each start. Entries are
 * stored, not compressed, and the files of a folder put behind them. The same jar and files give the same bytes.
 */
final class RenewClasses {
    private static final String CLASS = ".class";
    private static final String PROGRAM = "dev/quoin/";
    private static final int OLDEST = Opcodes.V1_6;
    private static final int RENEWED = Opcodes.V1_8;

    private final ClassLoader classes;

    private RenewClasses(ClassLoader classes) {
        this.classes = classes;
    }

    public static void main(String[] args) throws IOException {
        Path from = Path.of(args[0]);
        try (URLClassLoader classes = new URLClassLoader(new URL[] {from.toUri().toURL()});
                ZipFile in = new ZipFile(from.toFile());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(Path.of(args[1])))) {
            RenewClasses renewal = new RenewClasses(classes);
            Map<String, ClassNode> program = new LinkedHashMap<>();
            for (ZipEntry entry : Collections.list(in.entries())) {
                String name = entry.getName();
                byte[] old = in.getInputStream(entry).readAllBytes();
                if (!name.endsWith(CLASS)) {
                    store(name, old, entry.getLastModifiedTime(), out);
                } else if (!name.startsWith(PROGRAM)) {
                    store(name, renewal.renew(old), entry.getLastModifiedTime(), out);
                } else {
                    ClassNode node = new ClassNode();
                    new ClassReader(renewal.renew(old)).accept(node, 0);
                    program.put(node.name, node);
                }
            }
            for (ClassNode node : withLambdas(program)) {
                ZipEntry host = in.getEntry(nestHost(node) + CLASS);
                ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
                node.accept(writer);
                store(node.name + CLASS, writer.toByteArray(), host.getLastModifiedTime(), out);
            }
            storeAll(Path.of(args[2]), in.entries().nextElement().getLastModifiedTime(), out);
        }
    }

    /** Stores the files of a folder, in the order of their names. */
    private static void storeAll(Path folder, FileTime time, ZipOutputStream out) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                String name = folder.relativize(file).toString().replace(File.separatorChar, '/');
                store(name, Files.readAllBytes(file), time, out);
            }
        }
    }

    /** All classes of the program, changed, and those that its lambdas become. */
    private static List<ClassNode> withLambdas(Map<String, ClassNode> program) {
        List<ClassNode> all = new ArrayList<>(program.values());
        for (ClassNode caller : program.values()) {
            all.addAll(SpeltOutLambdas.of(caller, program.get(nestHost(caller))));
        }
        return all;
    }

    private static String nestHost(ClassNode node) {
        return node.nestHostClass == null ? node.name : node.nestHostClass;
    }

    private static void store(String name, byte[] bytes, FileTime time, ZipOutputStream out) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        // To the second alone: a time to the millisecond takes a field more, which Java looks through in each entry at a start.
        entry.setTimeLocal(LocalDateTime.ofInstant(time.toInstant(), ZoneOffset.UTC));
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(bytes.length);
        CRC32 sum = new CRC32();
        sum.update(bytes);
        entry.setCrc(sum.getValue());
        out.putNextEntry(entry);
        out.write(bytes);
    }

    private byte[] renew(byte[] old) {
        ClassReader reader = new ClassReader(old);
        if ("java/lang/Record".equals(reader.getSuperName())) {
            ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
            reader.accept(new SpeltOutRecord(writer), 0);
            return writer.toByteArray();
        }
        int version = (old[6] & 0xff) << 8 | old[7] & 0xff;
        if (version >= OLDEST) {
            return old;
        }
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
            @Override
            protected ClassLoader getClassLoader() {
                return classes;
            }
        };
        reader.accept(new Renewal(writer), ClassReader.SKIP_FRAMES);
        return writer.toByteArray();
    }

    /** Sets the version, and inlines subroutines, which newer versions have no longer. */
    private static final class Renewal extends ClassVisitor {
        Renewal(ClassVisitor next) {
            super(Opcodes.ASM9, next);
        }

        @Override
        public void visit(int version, int access, String name, String signature, String base, String[] interfaces) {
            super.visit(RENEWED, access, name, signature, base, interfaces);
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String name, String descriptor, String signature, String[] exceptions) {
            MethodVisitor next = super.visitMethod(access, name, descriptor, signature, exceptions);
            return new JSRInlinerAdapter(next, access, name, descriptor, signature, exceptions);
        }
    }
}
