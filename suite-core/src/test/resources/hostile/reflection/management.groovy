def server = java.lang.management.ManagementFactory.platformMBeanServer
def name = new javax.management.ObjectName('com.sun.management:type=DiagnosticCommand')
def all = server.invoke(name, 'vmSystemProperties', null, null)
stage('rinse') {
    title all
}
