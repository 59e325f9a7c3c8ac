['touch marker'].collect(String::execute)*.waitFor()
