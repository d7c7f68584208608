#pragma once

#include "core/nets/nets.h"
#include "core/sheet/protection.h"
#include "core/sheet/wiring_sheet.h"

namespace pumpwright {

// The tables of the sheet.

SheetTable wireTable(const Circuit& circuit, const std::map<WireId, Protection>& protection);
SheetTable connectionTable(const Circuit& circuit);
SheetTable hoseTable(const Circuit& circuit);
SheetTable partsList(const Circuit& circuit, const PriceList& prices);
SheetTable fuseTable(const Circuit& circuit, const std::map<WireId, Protection>& protection);
SheetTable setPointTable(const Circuit& circuit);
SheetTable findingTable(const Circuit& circuit, const std::vector<Finding>& findings);

/// The wires at a terminal and where they go: "W3 RD 1.5 mm² to F1:2; W4 …".
std::string leadsText(const Circuit& circuit, const End& at);

} // namespace pumpwright
