#include "core/sheet/wiring_sheet.h"

#include "core/nets/nets.h"
#include "core/sheet/commissioning.h"
#include "core/sheet/fault_table.h"
#include "core/sheet/how_it_works.h"
#include "core/sheet/protection.h"
#include "core/sheet/tables_p.h"

namespace pumpwright {

WiringSheet wiringSheet(const Circuit& circuit, const std::vector<Finding>& findings, std::string checkSum,
                        const PriceList& prices) {
    const Nets nets = findNets(circuit);
    const auto protection = wireProtection(circuit, nets);
    const Survey survey({circuit, nets, nullptr});
    WiringSheet sheet;
    sheet.title = circuit.title;
    sheet.checkSum = std::move(checkSum);
    sheet.howItWorks = howItWorks(survey, workingsOf(survey));
    sheet.wires = wireTable(circuit, protection);
    sheet.hoses = hoseTable(circuit);
    sheet.connections = connectionTable(circuit);
    sheet.sockets = socketViews(circuit);
    sheet.parts = partsList(circuit, prices);
    sheet.fuses = fuseTable(circuit, protection);
    sheet.setPoints = setPointTable(circuit);
    sheet.findings = findingTable(circuit, findings);
    sheet.cautions = cautions();
    return sheet;
}

WiringSheet withTests(WiringSheet sheet, const Circuit& circuit, const BreakdownStudy& study) {
    const Nets nets = findNets(circuit);
    const Survey survey({circuit, nets, nullptr});
    const StandingTests tests = standingTestsOf(survey);
    Commissioning commissioning = commissioningOf(survey, tests);
    sheet.faults = faultTable(survey, tests, study);
    sheet.tests = std::move(commissioning.stages);
    sheet.stopConditions = std::move(commissioning.stopConditions);
    return sheet;
}

} // namespace pumpwright
