#include "core/units/money.h"
#include "core/units/quantity_kind.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>

namespace {

using pumpwright::QuantityKind;

/// A broken promise ends the run, which libFuzzer and the replay both report with the input.
void require(bool kept, const char* promise) {
    if (!kept) {
        std::fputs(promise, stderr);
        std::fputc('\n', stderr);
        std::abort();
    }
}

void checkRead(double si, QuantityKind kind) {
    require(std::isfinite(si), "a value that is read is finite");
    const std::string shown = pumpwright::formatQuantity(si, kind);
    const auto again = pumpwright::parseQuantity(shown, kind);
    if (!again) {
        // Only rounding to four digits at the very ends of the range may leave it.
        require(again.error().code == pumpwright::ErrorCode::OutOfRange, "a shown value is read back");
        return;
    }
    require(pumpwright::formatQuantity(*again, kind) == shown, "a value read back is shown as the same text");
}

void checkRefused(const pumpwright::Error& error) {
    require(error.text.find("for example") != std::string::npos, "a refusal says what would be right");
    require(error.text.size() < 1000, "a refusal is short whatever the input");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    std::string text(size, '\0');
    for (std::size_t i = 0; i < size; ++i) {
        text[i] = static_cast<char>(data[i]);
    }
    for (const QuantityKind kind : pumpwright::quantityKinds()) {
        const auto read = pumpwright::parseQuantity(text, kind);
        if (read) {
            checkRead(*read, kind);
        } else {
            checkRefused(read.error());
        }
    }
    const auto money = pumpwright::parseMoney(text, "EUR");
    require(!money || std::isfinite(*money), "an amount that is read is finite");
    return 0;
}
