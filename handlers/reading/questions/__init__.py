"""What is asked: the topic, and the figures that the answer needs."""
