// Run while building: prints the manual page or the completion, for the installation.
#include "app/console/manual/manual_page.h"

#include <cstdio>
#include <cstring>

int main(int argc, char** argv) {
    const bool completion = argc > 1 && std::strcmp(argv[1], "completion") == 0;
    std::fputs((completion ? pumpwright::bashCompletion() : pumpwright::manualPage()).c_str(), stdout);
    return 0;
}
