stage('<html>rinse') { title 'Rinse' }
