#include "core/files/circuit_file.h"

#include "core/files/circuit_decode.h"
#include "core/files/circuit_encode.h"
#include "core/files/json_layout.h"
#include "core/files/json_scan.h"
#include "core/files/whole_file.h"

#include <fmt/core.h>

#include <cstdint>

namespace pumpwright {

Result<Circuit> parseCircuit(std::string_view text, const std::string& fileName) {
    if (auto fault = jsonFault(text, fileName)) {
        return tl::unexpected(std::move(*fault));
    }
    const OrderedJson tree = OrderedJson::parse(text, nullptr, false);
    ReadFault fault;
    Circuit circuit = decodedCircuit(tree, fault);
    if (fault.error()) {
        Error error = *fault.error();
        error.place.file = fileName;
        error.place.line = lineOfPointer(text, error.place.pointer);
        return tl::unexpected(std::move(error));
    }
    return circuit;
}

std::string circuitText(const Circuit& circuit) {
    return laidOutText(encodedCircuit(circuit));
}

Result<Circuit> readCircuit(const std::filesystem::path& path) {
    return fileText(path, JsonLimits{}.fileBytes).and_then([&](const std::string& text) {
        return parseCircuit(text, path.string());
    });
}

Result<void> writeCircuit(const Circuit& circuit, const std::filesystem::path& path) {
    const std::string text = circuitText(circuit);
    // A file that could not be opened again would be the same as a lost one.
    if (auto again = parseCircuit(text, path.string()); !again) {
        Error error = std::move(again.error());
        error.text = "Not saved, because the file could not be opened again. " + error.text;
        return tl::unexpected(std::move(error));
    }
    return replaceFile(path, text);
}

std::string circuitCheckSum(const Circuit& circuit) {
    // The hash FNV-1a with 64 bits, its halves folded into one. Tells versions apart; keeps nobody from
    // forging.
    std::uint64_t sum = 0xcbf29ce484222325U;
    for (const char character : circuitText(circuit)) {
        sum = (sum ^ static_cast<unsigned char>(character)) * 0x100000001b3U;
    }
    return fmt::format("{:08X}", static_cast<std::uint32_t>(sum >> 32U) ^ static_cast<std::uint32_t>(sum));
}

std::string fragmentText(const Circuit& fragment) {
    return laidOutText(encodedFragment(fragment));
}

Result<Circuit> parseFragment(std::string_view text) {
    return parseCircuit(text).map([](Circuit whole) {
        Circuit fragment;
        fragment.parts = std::move(whole.parts);
        fragment.wires = std::move(whole.wires);
        fragment.hoses = std::move(whole.hoses);
        return fragment;
    });
}

} // namespace pumpwright
