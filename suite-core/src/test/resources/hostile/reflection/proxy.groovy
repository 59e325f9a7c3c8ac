def handler = { p, m, a -> new File('marker').createNewFile() } as java.lang.reflect.InvocationHandler
java.lang.reflect.Proxy.newProxyInstance(this.class.classLoader, [Runnable] as Class[], handler).run()
