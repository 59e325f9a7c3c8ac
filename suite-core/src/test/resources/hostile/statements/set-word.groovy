stage = { id, body -> }
