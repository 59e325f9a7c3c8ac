Runtime.runtime.halt(3)
