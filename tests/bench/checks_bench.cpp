// How long the checks take on circuits of 30, 1,000 and 10,000 parts without a drive, how long a check after
// one edit, and which rules take the most of it. Printed, never asserted. Goals: 5, 100 and 200 ms. Finding
// the nets of the same circuit is beside it: the least that any look at a circuit must do.

#include "core/checks/rule.h"
#include "core/checks/survey.h"
#include "core/circuit/edit.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <functional>
#include <vector>

using namespace pumpwright;

namespace {

double milliseconds(const std::function<void()>& job) {
    std::vector<double> times_ms;
    double sum_ms = 0;
    while (times_ms.size() < 3 || (sum_ms < 300 && times_ms.size() < 100)) {
        const auto begin = std::chrono::steady_clock::now();
        job();
        times_ms.push_back(
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count());
        sum_ms += times_ms.back();
    }
    std::nth_element(times_ms.begin(), times_ms.begin() + static_cast<std::ptrdiff_t>(times_ms.size() / 2),
                     times_ms.end());
    return times_ms[times_ms.size() / 2];
}

/// Pump circuits with ignition switch, timer, relay and warning lamp side by side on one battery.
class Works {
public:
    Circuit ofParts(std::size_t count) {
        while (m_circuit.parts.size() < count) {
            addUnit();
        }
        return m_circuit;
    }

private:
    std::string name(const char* letter) const { return letter + std::to_string(m_units); }

    void part(const char* kind, const std::string& id, std::map<std::string, double> values = {},
              std::map<std::string, std::string> choices = {}) {
        const int column = static_cast<int>(m_circuit.parts.size());
        Part made = newPart(*findPartKind(kind), id, {column % 40 * 12, column / 40 * 12});
        made.values.merge(values);
        made.choices.merge(choices);
        m_circuit.parts.insert_or_assign(PartId{id}, std::move(made));
    }

    void wire(const std::string& from, const char* fromTerminal, const std::string& to,
              const char* toTerminal, double area_m2 = 0.75e-6, double length_m = 1) {
        Wire made;
        made.reference = "W" + std::to_string(m_circuit.wires.size() + 1);
        made.from = {PartId{from}, fromTerminal};
        made.to = {PartId{to}, toTerminal};
        made.area_m2 = area_m2;
        made.length_m = length_m;
        m_circuit.wires.insert_or_assign(WireId{made.reference}, std::move(made));
    }

    void hose(const std::string& from, const char* fromPort, const std::string& to, const char* toPort) {
        Hose made;
        made.reference = "H" + std::to_string(m_circuit.hoses.size() + 1);
        made.from = {PartId{from}, fromPort};
        made.to = {PartId{to}, toPort};
        m_circuit.hoses.insert_or_assign(HoseId{made.reference}, std::move(made));
    }

    void addUnit() {
        if (m_units == 0) {
            m_battery = name("G");
            part("supply", m_battery, {{"capacity_C", 3.6e6}, {"internalResistance_ohm", 0.015}});
            part("ground", name("XG"));
            wire(m_battery, "31", name("XG"), "31", 10e-6, 0.5);
        }
        addParts();
        addWires();
        ++m_units;
    }

    void addParts() {
        part("booster", name("A"));
        part("tee", name("XT"));
        part("tee", name("XU"));
        part("check-valve", name("R"));
        part("vacuum-switch", name("B"));
        part("vacuum-switch", name("BW"), {{"setPoint_Pa", 30e3}, {"differential_Pa", 6e3}});
        part("pump", name("M"));
        part("fuse", name("F"), {{"rating_A", 15}});
        part("fuse", name("FS"), {{"rating_A", 5}});
        part("fuse", name("FW"), {{"rating_A", 3}});
        part("hand-switch", name("S"));
        part("timer", name("KT"));
        part("relay", name("K"), {}, {{"suppression", "diode"}});
        part("lamp", name("P"), {{"ratedPower_W", 0.3}}, {{"sort", "led"}});
        part("ground", name("XA"));
        part("ground", name("XB"));
    }

    void addWires() {
        wire(m_battery, "30", name("F"), "1", 2.5e-6, 0.15);
        wire(name("F"), "2", name("K"), "30", 2.5e-6, 1.5);
        wire(name("K"), "87", name("M"), "+", 2.5e-6, 1.5);
        wire(name("M"), "-", name("XA"), "31", 2.5e-6, 0.5);
        wire(m_battery, "30", name("FS"), "1", 0.75e-6, 0.15);
        wire(name("FS"), "2", name("S"), "1");
        wire(name("S"), "2", name("B"), "1");
        wire(name("S"), "2", name("KT"), "15");
        wire(name("KT"), "15", name("KT"), "30", 0.75e-6, 0.1);
        wire(name("B"), "2", name("KT"), "S");
        wire(name("KT"), "31", name("XB"), "31");
        wire(name("KT"), "87", name("K"), "86");
        wire(name("K"), "85", name("XB"), "31");
        wire(m_battery, "30", name("FW"), "1", 0.75e-6, 0.15);
        wire(name("FW"), "2", name("BW"), "1");
        wire(name("BW"), "2", name("P"), "1");
        wire(name("P"), "2", name("XA"), "31");
        hose(name("A"), "vacuum", name("XT"), "a");
        hose(name("XT"), "c", name("B"), "vacuum");
        hose(name("XT"), "b", name("XU"), "a");
        hose(name("XU"), "c", name("BW"), "vacuum");
        hose(name("XU"), "b", name("R"), "booster");
        hose(name("R"), "pump", name("M"), "inlet");
    }

    Circuit m_circuit;
    std::string m_battery;
    std::size_t m_units = 0;
};

struct Times {
    double nets_ms = 0;
    double survey_ms = 0;
    double check_ms = 0;
    double edit_ms = 0;
    std::size_t findings = 0;
};

Times timesOf(Circuit& circuit) {
    Times times;
    times.nets_ms = milliseconds([&] { findNets(circuit); });
    const Nets nets = findNets(circuit);
    const CheckInputs inputs{circuit, nets};
    times.survey_ms = milliseconds([&] { const Survey survey(inputs); });
    times.check_ms = milliseconds([&] { times.findings = checkCircuit(inputs).size(); });
    Edit edit{"Lay W3 longer", {}};
    Wire wire = circuit.wires.at(WireId{"W3"});
    wire.length_m += 0.5;
    edit.changes.push_back(putWire(WireId{"W3"}, wire));
    times.edit_ms = milliseconds([&] {
        edit = applyEdit(circuit, edit);
        const Nets changed = findNets(circuit);
        checkCircuit({circuit, changed});
    });
    return times;
}

void printSlowest(const Circuit& circuit) {
    const Nets nets = findNets(circuit);
    const CheckInputs inputs{circuit, nets};
    const Survey survey(inputs);
    std::vector<std::pair<double, std::string_view>> slow;
    for (const Rule* rule : rules()) {
        slow.emplace_back(milliseconds([&] { rule->check(*rule, survey); }), rule->id);
    }
    std::sort(slow.rbegin(), slow.rend());
    fmt::print("slowest rules:");
    for (std::size_t i = 0; i < 6 && i < slow.size(); ++i) {
        fmt::print(" {} {:.2f} ms{}", slow[i].second, slow[i].first, i == 5 ? "\n" : ",");
    }
}

} // namespace

int main() {
    fmt::print("{:>7} {:>7} {:>9} {:>10} {:>10} {:>15} {:>9}\n", "parts", "wires", "nets [ms]", "survey [ms]",
               "check [ms]", "after edit [ms]", "findings");
    Works works;
    Times before;
    double partsBefore = 0;
    for (const std::size_t count : {30U, 1'000U, 10'000U}) {
        Circuit circuit = works.ofParts(count);
        const Times times = timesOf(circuit);
        fmt::print("{:>7} {:>7} {:>9.3f} {:>11.3f} {:>10.3f} {:>15.3f} {:>9}\n", circuit.parts.size(),
                   circuit.wires.size(), times.nets_ms, times.survey_ms, times.check_ms, times.edit_ms,
                   times.findings);
        const auto parts = static_cast<double>(circuit.parts.size());
        if (partsBefore > 0) {
            fmt::print("        grows with the parts to the power of {:.2f}\n",
                       std::log(times.check_ms / before.check_ms) / std::log(parts / partsBefore));
        }
        printSlowest(circuit);
        before = times;
        partsBefore = parts;
    }
    return 0;
}
