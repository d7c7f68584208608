#include "core/files/circuit_file.h"
#include "tests/fuzz/promise.h"

using namespace pumpwright;

namespace {

void checkRead(const Circuit& circuit) {
    const std::string text = circuitText(circuit);
    const auto again = parseCircuit(text, "input");
    require(again.has_value(), "what is written is read");
    require(*again == circuit, "what is read back is what was written");
    require(circuitText(*again) == text, "what is read back is written the same");
    require(parseFragment(fragmentText(circuit)).has_value(), "a fragment is read");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto circuit = parseCircuit(textOf(data, size), "input");
    if (circuit) {
        checkRead(*circuit);
    } else {
        checkRefused(circuit.error());
    }
    return 0;
}
