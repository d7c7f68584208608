#pragma once

#include "core/circuit/circuit.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace pumpwright {

/// One line of what must be bought.
struct BillLine {
    double quantity = 0;
    std::string unit; ///< "pc" or "m"
    std::string description;
    std::string ratings;
    std::vector<std::string> references; ///< in the order in which people read them
    std::optional<double> price;         ///< of one unit; nothing where nobody entered one
    double sum = 0;                      ///< rounded to hundredths, so that printed lines add up
};

struct Bill {
    /// Parts as the schematic reads, then wire (as cut) and hose by the metre, then crimps and sleeves.
    std::vector<BillLine> lines;
    double total = 0; ///< of the lines that have a price
    int unpriced = 0; ///< lines that have none
};

/// Titles of catalogue entries by their ids.
using CatalogueTitles = std::map<std::string, std::string>;

/// Equal parts share a line, and so do wires of one gauge, colour and insulation and hoses of one diameter. A
/// part from an entry that `titles` does not know is called by its kind.
Bill billOf(const Circuit& circuit, const CatalogueTitles& titles = {});

} // namespace pumpwright
