def a = 'aaaaaaaaaaaaaaaaaaaa'
def b = "$a$a$a$a$a$a$a$a$a$a"
def c = "$b$b$b$b$b$b$b$b$b$b"
def d = "$c$c$c$c$c$c$c$c$c$c"
def e = "$d$d$d$d$d$d$d$d$d$d"
def f = "$e$e$e$e$e$e$e$e$e$e"
def g = "$f$f$f$f$f$f$f$f$f$f"
def h = "$g$g$g$g$g$g$g$g$g$g"
def i = "$h$h$h$h$h$h$h$h$h$h"
stage('rinse') { title "$i" }
