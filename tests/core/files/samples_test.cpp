#include "core/files/circuit_file.h"
#include "core/files/whole_file.h"
#include "tests/support/catch.h"

#include <filesystem>

using namespace pumpwright;

TEST_CASE("every sample opens, and is written as it stands", "[files][samples]") {
    int count = 0;
    for (const auto& entry : std::filesystem::directory_iterator("samples")) {
        if (entry.path().extension() != ".pumpwright") {
            continue;
        }
        ++count;
        INFO(entry.path());
        const auto circuit = readCircuit(entry.path());
        if (!circuit) {
            FAIL(circuit.error().text << " " << circuit.error().place.pointer);
        }
        CHECK_FALSE(circuit->parts.empty());
        CHECK_FALSE(circuit->title.title.empty());
        CHECK(circuitText(*circuit) == fileText(entry.path(), 1U << 20U).value());
    }
    CHECK(count >= 5);
}
