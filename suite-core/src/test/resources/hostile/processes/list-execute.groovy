['touch', 'marker'].execute().waitFor()
