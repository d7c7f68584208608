#include "core/files/catalogue.h"
#include "core/files/circuit_file.h"

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>

namespace {

/// A broken promise ends the run, which libFuzzer and the replay both report with the input.
void require(bool kept, const char* promise) {
    if (!kept) {
        std::fputs(promise, stderr);
        std::fputc('\n', stderr);
        std::abort();
    }
}

void checkRefused(const pumpwright::Error& error) {
    require(!error.text.empty(), "a refusal has a text");
    require(error.text.size() < 2000, "a refusal is short whatever the input");
    require(error.place.file == "input", "a refusal names the file");
    for (const char byte : error.text) {
        require(byte != '\n' && byte != '\0' && byte != '\x1b', "a refusal is one line of plain text");
    }
}

void checkRead(const pumpwright::Circuit& circuit) {
    const std::string text = pumpwright::circuitText(circuit);
    const auto again = pumpwright::parseCircuit(text, "input");
    require(again.has_value(), "what is written is read");
    require(*again == circuit, "what is read back is what was written");
    require(pumpwright::circuitText(*again) == text, "what is read back is written the same");
    require(pumpwright::parseFragment(pumpwright::fragmentText(circuit)).has_value(), "a fragment is read");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    std::string text(size, '\0');
    for (std::size_t i = 0; i < size; ++i) {
        text[i] = static_cast<char>(data[i]);
    }
    const auto circuit = pumpwright::parseCircuit(text, "input");
    if (circuit) {
        checkRead(*circuit);
    } else {
        checkRefused(circuit.error());
    }
    const auto catalogue = pumpwright::parseCatalogue(text, "input");
    if (!catalogue) {
        checkRefused(catalogue.error());
    }
    return 0;
}
