def there = URI.create('http://127.0.0.1:«port»/')
java.net.http.HttpClient.newHttpClient()
    .send(java.net.http.HttpRequest.newBuilder(there).build(), java.net.http.HttpResponse.BodyHandlers.ofString())
