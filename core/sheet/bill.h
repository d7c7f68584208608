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

/// What the bill takes from a catalogue. A price of 0 was not entered.
struct PriceList {
    std::map<std::string, std::string> titles; ///< of catalogue entries by their ids
    std::string currency = "EUR";              ///< prices are left out where the circuit is in another
    double smallCrimp = 0;                     ///< one crimp terminal for conductors up to 6 mm²
    double largeCrimp = 0;                     ///< one for more
    double sleeve = 0;                         ///< one heat-shrink sleeve
};

/// Equal parts share a line, and so do wires of one gauge, colour and insulation and hoses of one diameter. A
/// part from an entry that `prices` does not know is called by its kind.
Bill billOf(const Circuit& circuit, const PriceList& prices = {});

} // namespace pumpwright
