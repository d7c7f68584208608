#pragma once

#include "core/circuit/circuit.h"
#include "core/sheet/bill.h"
#include "core/units/result.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// A part that can be bought: a kind with values, and a price. Generic; no brands.
struct CatalogueEntry {
    std::string id;
    std::string title;
    std::string kind;
    std::map<std::string, double> values;
    std::map<std::string, std::string> choices;
    double price = 0; ///< in `Catalogue::currency`
    std::string note; ///< where the values come from
};

struct Catalogue {
    std::string currency = "EUR"; ///< ISO 4217
    std::vector<CatalogueEntry> entries;
    double wirePrice_perMetrePerSquareMillimetre = 0;
    double hosePrice_perMetre = 0;
    double smallCrimpPrice = 0; ///< of one crimp terminal for conductors up to 6 mm²
    double largeCrimpPrice = 0; ///< of one for more
    double sleevePrice = 0;     ///< of one heat-shrink sleeve
    /// The entry with this id, or nullptr.
    const CatalogueEntry* find(std::string_view id) const;
};

/// Reads one catalogue. `fileName` is for messages only. Every entry is held to the values and choices of its
/// kind.
[[nodiscard]] Result<Catalogue> parseCatalogue(std::string_view text, const std::string& fileName = {});

/// The program's own catalogue, which must be there, and after it those of the user's that are there. An
/// entry of a later file takes the place of an earlier one with the same id; so do a later file's prices of
/// wire, hose and crimps. All are in one currency.
[[nodiscard]] Result<Catalogue> readCatalogue(const std::vector<std::filesystem::path>& paths);

/// What the parts list needs to know.
PriceList priceListOf(const Catalogue& catalogue);

/// A part placed from an entry.
Part partFromCatalogue(const CatalogueEntry& entry, std::string reference, GridPoint at);

} // namespace pumpwright
