#include "core/files/catalogue.h"
#include "core/files/circuit_file.h"
#include "tests/fuzz/promise.h"

#include <cmath>

using namespace pumpwright;

namespace {

void checkRead(const Catalogue& catalogue) {
    const PriceList prices = priceListOf(catalogue);
    require(prices.currency == catalogue.currency, "prices keep their currency");
    Circuit placed;
    for (const CatalogueEntry& entry : catalogue.entries) {
        require(catalogue.find(entry.id) != nullptr, "every entry is found by its id");
        require(std::isfinite(entry.price) && entry.price >= 0, "a price is a number");
        placed.parts.insert_or_assign(freePartId(placed), partFromCatalogue(entry, "X1", {1, 2}));
    }
    require(parseCircuit(circuitText(placed), "input").has_value(),
            "parts placed from a catalogue can be saved");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto catalogue = parseCatalogue(textOf(data, size), "input");
    if (catalogue) {
        checkRead(*catalogue);
    } else {
        checkRefused(catalogue.error());
    }
    return 0;
}
