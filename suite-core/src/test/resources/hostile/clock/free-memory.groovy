def before = Runtime.runtime.freeMemory()
def heap = (1..20000).collect { "$it" + System.nanoTime() }
stage('rinse') {
    title "${before} ${Runtime.runtime.freeMemory()}"
}
