#include "core/checks/carried_current.h"
#include "core/checks/lead_values.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/standard_size.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

// Up to the wire's capacity a fuse is right. The next standard size above is allowed with 150 % as the end
// [33 CFR 183.455(c)(1)]; another rule ends at 125 % [Caltrans equipment electrical standards 3.4].
constexpr double kWarnShare = 1.25;
constexpr double kForbiddenShare = 1.5;

/// Wires behind a fuse that may carry less than its rating.
struct Endangered {
    std::vector<WireId> wires;
    WireId weakest;
    double lowest_A = 0;
};

Endangered endangeredWires(const Survey& survey, const Branch& fuse, double rating_A) {
    Endangered endangered;
    for (const WireId& id : survey.wiresBehind(fuse)) {
        const double limit_A = capacity_A(survey, survey.circuit().wires.at(id));
        if (rating_A <= limit_A) {
            continue;
        }
        if (endangered.wires.empty() || limit_A < endangered.lowest_A) {
            endangered.weakest = id;
            endangered.lowest_A = limit_A;
        }
        endangered.wires.push_back(id);
    }
    return endangered;
}

void setSeverity(Finding& finding, double share) {
    finding.word = share > kWarnShare ? SignalWord::Warning : SignalWord::Caution;
    finding.source = share > kForbiddenShare ? "33 CFR 183.455(c)(1)"
                     : share > kWarnShare    ? "Caltrans equipment electrical standards 3.4"
                                             : "33 CFR 183.455(c)";
}

std::optional<Remedy> smallerFuse(const Survey& survey, std::size_t fuse, const Endangered& endangered) {
    const PartId& id = survey.branches()[fuse].part;
    const double load_A = sustainedCurrent(survey, fuse).value_A;
    const auto rating_A = fuseAtMost_A(endangered.lowest_A);
    if (!rating_A || load_A > survey.circuit().limits.continuousFuseShare * *rating_A) {
        return std::nullopt;
    }
    const Text text =
        say("fuse of {} as {}", amount(*rating_A, QuantityKind::Current), nameOf(survey.circuit(), id));
    return Remedy{say("Fit a {}.", text),
                  valueEdit(survey.circuit(), id, "rating_A", *rating_A, say("Fit a {}", text))};
}

std::optional<Remedy> largerWires(const Survey& survey, const Endangered& endangered, double rating_A) {
    std::map<WireId, double> areas_m2;
    for (const WireId& id : endangered.wires) {
        const Wire& wire = survey.circuit().wires.at(id);
        auto area_m2 = nextWireArea_m2(wire.area_m2);
        while (area_m2 && capacity_A(survey, wire, *area_m2) < rating_A) {
            area_m2 = nextWireArea_m2(*area_m2);
        }
        if (!area_m2) {
            return std::nullopt;
        }
        areas_m2[id] = *area_m2;
    }
    const Text names = listOf(namesOf(survey.circuit(), endangered.wires));
    return Remedy{say("Lay {} in a gauge for {}.", names, amount(rating_A, QuantityKind::Current)),
                  areaEdit(survey.circuit(), areas_m2, say("Lay larger wires behind the fuse"))};
}

Finding findingFor(const Rule& rule, const Survey& survey, std::size_t fuse, const Endangered& endangered) {
    const PartId& id = survey.branches()[fuse].part;
    const std::string name = nameOf(survey.circuit(), id);
    const double rating_A = survey.features(id).fuse->rating_A;
    Finding finding = newFinding(rule);
    finding.parts = {id};
    finding.wires = endangered.wires;
    finding.value = rating_A;
    finding.limit = endangered.lowest_A;
    finding.kind = QuantityKind::Current;
    setSeverity(finding, endangered.lowest_A > 0 ? rating_A / endangered.lowest_A : 2 * kForbiddenShare);
    finding.what =
        say("{} is rated for {}, but {} behind it may carry only {}.", name, amount(rating_A, finding.kind),
            nameOf(survey.circuit(), endangered.weakest), amount(endangered.lowest_A, finding.kind));
    finding.why = say("An overload that the fuse carries for ever burns the wire's insulation.");
    for (const auto& remedy :
         {smallerFuse(survey, fuse, endangered), largerWires(survey, endangered, rating_A)}) {
        if (remedy) {
            finding.remedies.push_back(*remedy);
        }
    }
    if (finding.remedies.empty()) {
        finding.remedies = {{say("Share what {} feeds between several fuses.", name), {}}};
    }
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& fuse = survey.branches()[i];
        if (fuse.sort != BranchSort::Fuse) {
            continue;
        }
        const Endangered endangered =
            endangeredWires(survey, fuse, survey.features(fuse.part).fuse->rating_A);
        if (!endangered.wires.empty()) {
            findings.push_back(findingFor(rule, survey, i, endangered));
        }
    }
    return findings;
}

} // namespace

extern const Rule kFuseLargerThanWire{"fuse-larger-than-wire",
                                      words("Fuse larger than the wire it protects"),
                                      SignalWord::Warning,
                                      words("33 CFR 183.455"),
                                      false,
                                      check};

} // namespace pumpwright
