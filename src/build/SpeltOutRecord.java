import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.RecordComponentVisitor;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.RecordComponentNode;

/** Writes out the two methods that compare a record's components, as the API of {@link Record} describes them. */
final class SpeltOutRecord extends ClassVisitor {
    private static final String MADE_AT_FIRST_CALL = "java/lang/runtime/ObjectMethods";

    private final List<RecordComponentNode> components = new ArrayList<>();
    private String record = "";

    SpeltOutRecord(ClassVisitor next) {
        super(Opcodes.ASM9, next);
    }

    @Override
    public void visit(int version, int access, String name, String signature, String base, String[] interfaces) {
        record = name;
        super.visit(version, access, name, signature, base, interfaces);
    }

    @Override
    public RecordComponentVisitor visitRecordComponent(String name, String descriptor, String signature) {
        components.add(new RecordComponentNode(name, descriptor, signature));
        return super.visitRecordComponent(name, descriptor, signature);
    }

    @Override
    public MethodVisitor visitMethod(
            int access, String name, String descriptor, String signature, String[] exceptions) {
        MethodVisitor next = super.visitMethod(access, name, descriptor, signature, exceptions);
        boolean compares = name.equals("equals") || name.equals("hashCode");
        return !compares
                ? next
                : new MethodVisitor(Opcodes.ASM9, next) {
                    @Override
                    public void visitInvokeDynamicInsn(
                            String name, String type, Handle bootstrap, Object... arguments) {
                        if (!bootstrap.getOwner().equals(MADE_AT_FIRST_CALL)) {
                            super.visitInvokeDynamicInsn(name, type, bootstrap, arguments);
                        } else if (name.equals("equals")) {
                            compare(this);
                        } else {
                            mix(this);
                        }
                    }
                };
    }

    /** From this record and another object on the stack to whether they are equal. */
    private void compare(MethodVisitor code) {
        Label differ = new Label();
        Label end = new Label();
        code.visitInsn(Opcodes.DUP);
        code.visitTypeInsn(Opcodes.INSTANCEOF, record);
        code.visitJumpInsn(Opcodes.IFEQ, differ);
        for (RecordComponentNode component : components) {
            Type type = Type.getType(component.descriptor);
            boolean object = type.getSort() >= Type.ARRAY;
            put(code, 0, component);
            put(code, 1, component);
            code.visitMethodInsn(
                    Opcodes.INVOKESTATIC,
                    object ? "java/util/Objects" : boxed(type),
                    object ? "equals" : "compare",
                    object ? "(Ljava/lang/Object;Ljava/lang/Object;)Z" : "(" + type + type + ")I",
                    false);
            code.visitJumpInsn(object ? Opcodes.IFEQ : Opcodes.IFNE, differ);
        }
        code.visitInsn(Opcodes.POP2);
        code.visitInsn(Opcodes.ICONST_1);
        code.visitJumpInsn(Opcodes.GOTO, end);
        code.visitLabel(differ);
        Object[] both = {record, "java/lang/Object"};
        code.visitFrame(Opcodes.F_FULL, 2, both, 2, both);
        code.visitInsn(Opcodes.POP2);
        code.visitInsn(Opcodes.ICONST_0);
        code.visitLabel(end);
        code.visitFrame(Opcodes.F_FULL, 2, both, 1, new Object[] {Opcodes.INTEGER});
    }

    /** From this record on the stack to its hash code. */
    private void mix(MethodVisitor code) {
        code.visitInsn(Opcodes.POP);
        code.visitInsn(Opcodes.ICONST_0);
        for (RecordComponentNode component : components) {
            Type type = Type.getType(component.descriptor);
            boolean object = type.getSort() >= Type.ARRAY;
            code.visitIntInsn(Opcodes.BIPUSH, 31);
            code.visitInsn(Opcodes.IMUL);
            put(code, 0, component);
            code.visitMethodInsn(
                    Opcodes.INVOKESTATIC,
                    object ? "java/util/Objects" : boxed(type),
                    "hashCode",
                    object ? "(Ljava/lang/Object;)I" : "(" + type + ")I",
                    false);
            code.visitInsn(Opcodes.IADD);
        }
    }

    private void put(MethodVisitor code, int variable, RecordComponentNode component) {
        code.visitVarInsn(Opcodes.ALOAD, variable);
        code.visitTypeInsn(Opcodes.CHECKCAST, record);
        code.visitFieldInsn(Opcodes.GETFIELD, record, component.name, component.descriptor);
    }

    private static String boxed(Type primitive) {
        return switch (primitive.getSort()) {
            case Type.BOOLEAN -> "java/lang/Boolean";
            case Type.CHAR -> "java/lang/Character";
            case Type.BYTE -> "java/lang/Byte";
            case Type.SHORT -> "java/lang/Short";
            case Type.INT -> "java/lang/Integer";
            case Type.LONG -> "java/lang/Long";
            case Type.FLOAT -> "java/lang/Float";
            default -> "java/lang/Double";
        };
    }
}
