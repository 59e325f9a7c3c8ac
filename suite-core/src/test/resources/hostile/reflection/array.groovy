java.lang.reflect.Array.newInstance(Object, 2_000_000_000)
