import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;

/**
 * A class in place of the one that Java would put together at the first call of a lambda or a method reference, as the API of
 * {@link java.lang.invoke.LambdaMetafactory} describes that. Its one method calls the implementation with what was captured and
 * with its own arguments. Where nothing is captured there is one object of it, elsewhere {@code make} makes one at each call.
 */
final class SpeltOutLambda {
    private static final String ONLY = "ONLY";
    private static final String MAKE = "make";
    private static final String CAPTURED = "captured";

    private final Type type;
    private final Type function;
    private final Type[] captured;
    private final Method method;
    private final Type[] arguments;
    private final Handle implementation;
    private final Type implementer;

    /**
     * @param name of the class
     * @param call what the class stands for, as {@link #fits} has it
     */
    SpeltOutLambda(String name, InvokeDynamicInsnNode call) {
        type = Type.getObjectType(name);
        function = Type.getReturnType(call.desc);
        captured = Type.getArgumentTypes(call.desc);
        method = new Method(call.name, ((Type) call.bsmArgs[0]).getDescriptor());
        implementation = (Handle) call.bsmArgs[1];
        implementer = Type.getObjectType(implementation.getOwner());
        arguments = ((Type) call.bsmArgs[2]).getArgumentTypes();
    }

    /** Whether a call is of a lambda, not one to be serialized or with bridges, nor of a superclass's own method. */
    static boolean fits(InvokeDynamicInsnNode call) {
        return call.bsm.getOwner().equals("java/lang/invoke/LambdaMetafactory")
                && call.bsm.getName().equals("metafactory")
                && ((Handle) call.bsmArgs[1]).getTag() != Opcodes.H_INVOKESPECIAL;
    }

    /** What to write instead of the call: it takes the same from the stack and leaves the same there. */
    AbstractInsnNode instead() {
        return captured.length == 0
                ? new FieldInsnNode(Opcodes.GETSTATIC, type.getInternalName(), ONLY, function.getDescriptor())
                : new MethodInsnNode(Opcodes.INVOKESTATIC, type.getInternalName(), MAKE, make().getDescriptor());
    }

    /** The class, as a nestmate of the one that calls, whose private methods it reaches so. */
    ClassNode toClass(int version, String nestHost) {
        ClassNode node = new ClassNode();
        int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
        String[] interfaces = {function.getInternalName()};
        node.visit(version, access, type.getInternalName(), null, "java/lang/Object", interfaces);
        node.visitNestHost(nestHost);
        writeConstructor(node);
        writeObject(node);
        writeMethod(node);
        return node;
    }

    private Method constructor() {
        return new Method("<init>", Type.VOID_TYPE, captured);
    }

    private Method make() {
        return new Method(MAKE, function, captured);
    }

    private void writeConstructor(ClassVisitor node) {
        GeneratorAdapter code = new GeneratorAdapter(Opcodes.ACC_PRIVATE, constructor(), null, null, node);
        code.loadThis();
        code.invokeConstructor(Type.getType(Object.class), new Method("<init>", "()V"));
        for (int i = 0; i < captured.length; i++) {
            node.visitField(
                    Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, CAPTURED + i, captured[i].getDescriptor(), null, null);
            code.loadThis();
            code.loadArg(i);
            code.putField(type, CAPTURED + i, captured[i]);
        }
        code.returnValue();
        code.endMethod();
    }

    /** The only object, or what makes one. */
    private void writeObject(ClassVisitor node) {
        boolean only = captured.length == 0;
        Method maker = only ? new Method("<clinit>", "()V") : make();
        GeneratorAdapter code = new GeneratorAdapter(Opcodes.ACC_STATIC, maker, null, null, node);
        code.newInstance(type);
        code.dup();
        code.loadArgs();
        code.invokeConstructor(type, constructor());
        if (only) {
            node.visitField(Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, ONLY, function.getDescriptor(), null, null);
            code.putStatic(type, ONLY, function);
        }
        code.returnValue();
        code.endMethod();
    }

    private void writeMethod(ClassVisitor node) {
        GeneratorAdapter code = new GeneratorAdapter(Opcodes.ACC_PUBLIC, method, null, null, node);
        boolean constructs = implementation.getTag() == Opcodes.H_NEWINVOKESPECIAL;
        if (constructs) {
            code.newInstance(implementer);
            code.dup();
        }
        List<Type> wanted = wanted();
        for (int i = 0; i < captured.length; i++) {
            code.loadThis();
            code.getField(type, CAPTURED + i, captured[i]);
            convert(code, captured[i], wanted.get(i));
        }
        for (int i = 0; i < arguments.length; i++) {
            code.loadArg(i);
            cast(code, method.getArgumentTypes()[i], arguments[i]);
            convert(code, arguments[i], wanted.get(captured.length + i));
        }
        code.visitMethodInsn(
                operation(),
                implementation.getOwner(),
                implementation.getName(),
                implementation.getDesc(),
                implementation.isInterface());
        convert(code, constructs ? implementer : Type.getReturnType(implementation.getDesc()), method.getReturnType());
        code.returnValue();
        code.endMethod();
    }

    private int operation() {
        return switch (implementation.getTag()) {
            case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
            case Opcodes.H_INVOKEVIRTUAL -> Opcodes.INVOKEVIRTUAL;
            case Opcodes.H_INVOKEINTERFACE -> Opcodes.INVOKEINTERFACE;
            case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
            default -> throw new IllegalArgumentException(implementation.toString());
        };
    }

    /** What the implementation takes from the stack: first the object that it is called on, if it is. */
    private List<Type> wanted() {
        List<Type> wanted = new ArrayList<>(List.of(Type.getArgumentTypes(implementation.getDesc())));
        if (operation() == Opcodes.INVOKEVIRTUAL || operation() == Opcodes.INVOKEINTERFACE) {
            wanted.add(0, implementer);
        }
        return wanted;
    }

    /** From a value on the stack to that value as another type, or to none where that is void. */
    private static void convert(GeneratorAdapter code, Type from, Type to) {
        if (to.equals(Type.VOID_TYPE)) {
            drop(code, from);
        } else if (isObject(from) && isObject(to)) {
            cast(code, from, to);
        } else if (isObject(from)) {
            Type boxed = unboxed(from, to);
            code.unbox(boxed);
            code.cast(boxed, to);
        } else if (isObject(to)) {
            code.valueOf(from);
            code.checkCast(to);
        } else {
            code.cast(from, to);
        }
    }

    private static void drop(GeneratorAdapter code, Type value) {
        if (value.getSize() == 1) {
            code.pop();
        } else if (value.getSize() == 2) {
            code.pop2();
        }
    }

    private static void cast(GeneratorAdapter code, Type from, Type to) {
        if (!from.equals(to)) {
            code.checkCast(to);
        }
    }

    private static boolean isObject(Type type) {
        return type.getSort() >= Type.ARRAY;
    }

    /** The primitive type that is boxed in a type; of a type that may hold several, such as Object, the one that is wanted. */
    private static Type unboxed(Type type, Type wanted) {
        return switch (type.getInternalName()) {
            case "java/lang/Boolean" -> Type.BOOLEAN_TYPE;
            case "java/lang/Character" -> Type.CHAR_TYPE;
            case "java/lang/Byte" -> Type.BYTE_TYPE;
            case "java/lang/Short" -> Type.SHORT_TYPE;
            case "java/lang/Integer" -> Type.INT_TYPE;
            case "java/lang/Long" -> Type.LONG_TYPE;
            case "java/lang/Float" -> Type.FLOAT_TYPE;
            case "java/lang/Double" -> Type.DOUBLE_TYPE;
            default -> wanted;
        };
    }
}
