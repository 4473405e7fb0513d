import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** Gives the lambdas and method references of a class classes of their own: those that do the same share one. */
final class SpeltOutLambdas {
    private final ClassNode caller;
    private final ClassNode nestHost;
    private final Map<List<Object>, SpeltOutLambda> lambdas = new HashMap<>();
    private final List<ClassNode> classes = new ArrayList<>();

    private SpeltOutLambdas(ClassNode caller, ClassNode nestHost) {
        this.caller = caller;
        this.nestHost = nestHost;
    }

    /**
     * Changes the caller and its nest's host, which may be the same.
     *
     * @return the new classes
     */
    static List<ClassNode> of(ClassNode caller, ClassNode nestHost) {
        SpeltOutLambdas speltOut = new SpeltOutLambdas(caller, nestHost);
        for (MethodNode method : caller.methods) {
            for (AbstractInsnNode instruction : method.instructions) {
                if (instruction instanceof InvokeDynamicInsnNode call && SpeltOutLambda.fits(call)) {
                    method.instructions.set(call, speltOut.lambda(call).instead());
                }
            }
        }
        return speltOut.classes;
    }

    private SpeltOutLambda lambda(InvokeDynamicInsnNode call) {
        return lambdas.computeIfAbsent(List.of(call.name, call.desc, List.of(call.bsmArgs)), key -> {
            SpeltOutLambda lambda = new SpeltOutLambda(caller.name + "$$Lambda" + classes.size(), call);
            ClassNode node = lambda.toClass(caller.version, nestHost.name);
            nestHost.visitNestMember(node.name);
            classes.add(node);
            return lambda;
        });
    }
}
