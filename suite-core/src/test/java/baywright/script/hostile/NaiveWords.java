package baywright.script.hostile;

import groovy.lang.Closure;
import groovy.lang.GroovyObjectSupport;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Words as a program without a fence would offer them: every call is taken, every closure among the arguments is run
 * with this object as its receiver, every text is kept to be shown.
 */
public class NaiveWords extends GroovyObjectSupport {

    private final List<String> shown;

    // Read by scripts that open private fields.
    @SuppressWarnings("UnusedVariable")
    private final String hostSecret;

    NaiveWords(List<String> shown, String hostSecret) {
        this.shown = shown;
        this.hostSecret = hostSecret;
    }

    /** A closure that stands for a word of the top level. */
    Closure<Object> word() {
        return new Closure<>(this) {
            @Override
            public Object call(Object... arguments) {
                take(arguments);
                return null;
            }
        };
    }

    @Override
    public Object invokeMethod(String name, Object arguments) {
        shown.add(name);
        take((Object[]) arguments);
        return this;
    }

    private void take(Object[] arguments) {
        Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Closure<?>> blocks = new ArrayList<>();
        for (Object argument : arguments) {
            collect(argument, seen, blocks);
        }
        for (Closure<?> block : blocks) {
            block.setDelegate(this);
            block.setResolveStrategy(Closure.DELEGATE_FIRST);
            block.call();
        }
    }

    private void collect(Object argument, Set<Object> seen, List<Closure<?>> blocks) {
        if (argument instanceof Closure<?> block) {
            blocks.add(block);
        } else if (argument instanceof Map<?, ?> map) {
            if (seen.add(map)) {
                map.values().forEach(v -> collect(v, seen, blocks));
            }
        } else if (argument instanceof List<?> list) {
            if (seen.add(list)) {
                list.forEach(v -> collect(v, seen, blocks));
            }
        } else {
            shown.add(String.valueOf(argument));
        }
    }
}
