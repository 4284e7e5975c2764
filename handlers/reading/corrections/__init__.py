"""What puts an earlier record right, adds to it or strikes it out."""
