#include "core/units/money.h"
#include "core/units/quantity_kind.h"
#include "tests/fuzz/promise.h"

#include <cmath>
#include <string>

namespace {

using pumpwright::QuantityKind;
using pumpwright::require;

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

void checkRefusedText(const pumpwright::Error& error) {
    require(error.text.find("for example") != std::string::npos, "a refusal says what would be right");
    require(error.text.size() < 1000, "a refusal is short whatever the input");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text = pumpwright::textOf(data, size);
    for (const QuantityKind kind : pumpwright::quantityKinds()) {
        const auto read = pumpwright::parseQuantity(text, kind);
        if (read) {
            checkRead(*read, kind);
        } else {
            checkRefusedText(read.error());
        }
    }
    const auto money = pumpwright::parseMoney(text, "EUR");
    require(!money || std::isfinite(*money), "an amount that is read is finite");
    return 0;
}
