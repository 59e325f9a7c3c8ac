['sh', '-c', 'echo written > marker'].execute().waitFor()
