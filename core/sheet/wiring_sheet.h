#pragma once

#include "core/checks/finding.h"
#include "core/circuit/circuit.h"
#include "core/sheet/bill.h"
#include "core/sheet/socket_view.h"
#include "core/study/breakdowns.h"

#include <optional>
#include <string>
#include <vector>

namespace pumpwright {

struct SheetTable {
    std::string title;
    std::vector<std::string> columns;
    std::vector<bool> numeric; ///< columns set right-aligned
    std::vector<std::vector<std::string>> rows;
    bool endsWithTotal = false;                         ///< the last row sums up the others
    std::optional<std::size_t> toFillIn = std::nullopt; ///< the column that is left empty to write in
    bool groupedByFirst =
        false; ///< rows with the same first cell belong together; on paper it is printed once
};

/// What the wiring sheet says, as texts in display units; how it is set out is up to the app.
struct WiringSheet {
    TitleBlock title;
    std::string checkSum;                ///< of the circuit, so that paper and file can be matched
    std::vector<std::string> howItWorks; ///< five sentences
    SheetTable wires;
    SheetTable hoses;
    SheetTable connections; ///< connectors, splices and ground points
    std::vector<SocketView> sockets;
    SheetTable parts; ///< parts list with prices, wire by the metre, and the total in the last row
    SheetTable fuses;
    SheetTable setPoints;
    SheetTable findings;           ///< open ones first, then waived ones with their reasons
    std::vector<SheetTable> tests; ///< commissioning, stage by stage; empty unless withTests() added it
    std::vector<std::string> stopConditions; ///< of the tests
    SheetTable faults; ///< for the roadside: symptoms and where to measure; filled by withTests()
    std::vector<std::string> cautions;
};

/// `prices` is for the parts list: see billOf().
WiringSheet wiringSheet(const Circuit& circuit, const std::vector<Finding>& findings, std::string checkSum,
                        const PriceList& prices = {});

/// Which terminals wires join, one net a row; terminals that nothing joins are left out.
SheetTable netTable(const Circuit& circuit);

/// Adds the commissioning steps with what the simulation says should be read, and from the study where to
/// look for what has broken. Takes as long as simulating some ten minutes.
WiringSheet withTests(WiringSheet sheet, const Circuit& circuit, const BreakdownStudy& study = {});

/// The usual cautions, shown at first start, on the sheet and in the README.
const std::vector<std::string>& cautions();

} // namespace pumpwright
