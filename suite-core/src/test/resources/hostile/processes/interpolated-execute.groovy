def what = 'touch'
"$what marker".execute().waitFor()
