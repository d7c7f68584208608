// The main of every test program without a window. It runs under the locale of the environment, as the window
// does, so that a number which goes by way of the locale shows where that has other signs.
#define CATCH_CONFIG_RUNNER
#include "tests/support/catch.h"

#include <clocale>

int main(int argc, char** argv) {
    std::setlocale(LC_ALL, "");
    return Catch::Session().run(argc, argv);
}
