#include "core/checks/carried_current.h"
#include "core/checks/current_loop.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"
#include "core/parts/conductor.h"

#include <fmt/format.h>

#include <algorithm>
#include <bit>
#include <functional>
#include <set>

namespace pumpwright {
namespace {

/// Parts whose contacts are tried in every combination; further ones are taken as not operated.
constexpr std::size_t kMostTried = 12;

/// Shorts of one source that are told; more help nobody.
constexpr std::size_t kMostShorts = 8;

using Way = std::vector<LeadStep>;

using MayClose = std::function<bool(const Branch& contact)>;

/// The way from plus to minus over contacts that may close.
std::optional<Way> shortWay(const Survey& survey, const Branch& source, const MayClose& mayClose) {
    return survey.leads().way(source.fromEnd(), source.toEnd(), std::nullopt, [&](const Branch& branch) {
        if (branch.sort == BranchSort::Contact) {
            return mayClose(branch);
        }
        // A diode across a winding that stands the wrong way round has a rule of its own.
        return conducts(branch) &&
               !(branch.sort == BranchSort::Rectifier && liesAcrossWinding(survey, branch));
    });
}

/// Parts whose contacts are worth trying: those on the way first, then the others.
std::vector<PartId> partsToTry(const Survey& survey, const Way& way) {
    std::vector<PartId> parts;
    const auto take = [&](const Branch& branch) {
        if (branch.sort == BranchSort::Contact && parts.size() < kMostTried &&
            std::find(parts.begin(), parts.end(), branch.part) == parts.end()) {
            parts.push_back(branch.part);
        }
    };
    for (const LeadStep& step : way) {
        if (step.branch) {
            take(survey.branches()[*step.branch]);
        }
    }
    for (const Branch& branch : survey.branches()) {
        take(branch);
    }
    return parts;
}

using Contacts = std::set<const Branch*>;

/// The short that needs the fewest parts operated, over none of the contacts that are left out.
std::optional<Way> easiestShort(const Survey& survey, const Branch& source, const Contacts& leftOut) {
    const auto throughAll =
        shortWay(survey, source, [&](const Branch& contact) { return !leftOut.contains(&contact); });
    if (!throughAll) {
        return std::nullopt;
    }
    const std::vector<PartId> parts = partsToTry(survey, *throughAll);
    for (int count = 0; count <= static_cast<int>(parts.size()); ++count) {
        for (std::uint32_t combination = 0; combination < 1U << parts.size(); ++combination) {
            if (std::popcount(combination) != count) {
                continue;
            }
            std::set<PartId> operated;
            for (std::size_t i = 0; i < parts.size(); ++i) {
                if ((combination >> i & 1U) != 0) {
                    operated.insert(parts[i]);
                }
            }
            auto way = shortWay(survey, source, [&](const Branch& contact) {
                return !leftOut.contains(&contact) &&
                       contactOf(survey, contact).closedAtRest != operated.contains(contact.part);
            });
            if (way) {
                return way;
            }
        }
    }
    return std::nullopt;
}

/// What is on the way of a short.
struct Short {
    std::vector<Text> contacts; ///< that must close, "K1 (30–87)"
    std::vector<std::string> fuses;
    std::vector<PartId> parts;
    std::vector<WireId> wires;
    double resistance_ohm = 0;
};

Short shortOver(const Survey& survey, const Branch& source, const Way& way) {
    Short found;
    found.parts = {source.part};
    found.resistance_ohm = survey.features(source.part).source->resistance_ohm;
    for (const LeadStep& step : way) {
        if (step.wire) {
            const Wire& wire = survey.circuit().wires.at(*step.wire);
            found.wires.push_back(*step.wire);
            found.resistance_ohm +=
                copperResistivity_ohmm(survey.circuit().limits.ambient_K) * wire.length_m / wire.area_m2;
            continue;
        }
        if (!step.branch) {
            continue;
        }
        const Branch& branch = survey.branches()[*step.branch];
        const std::string name = nameOf(survey.circuit(), branch.part);
        found.parts.push_back(branch.part);
        if (branch.sort == BranchSort::Contact && !contactOf(survey, branch).closedAtRest) {
            found.contacts.push_back(say("{} ({}–{})", name, branch.from, branch.to));
        } else if (branch.sort == BranchSort::Fuse) {
            found.fuses.push_back(name);
        }
    }
    return found;
}

Finding findingFor(const Rule& rule, const Survey& survey, const Branch& source, const Way& way) {
    const Short found = shortOver(survey, source, way);
    const double emf_V = survey.features(source.part).source->emf_V;
    Finding finding = newFinding(rule);
    finding.word = found.fuses.empty() ? SignalWord::Danger : SignalWord::Warning;
    finding.parts = found.parts;
    finding.wires = found.wires;
    finding.value = emf_V / std::max(found.resistance_ohm, 1e-4);
    finding.limit = 0;
    finding.kind = QuantityKind::Current;
    finding.what =
        say("{} is short-circuited{}: about {} flow over {}{}.", nameOf(survey.circuit(), source.part),
            asSoonAsClosed(found.contacts), amount(finding.value, finding.kind),
            listOf(namesOf(survey.circuit(), found.wires)),
            found.fuses.empty() ? say(" and no fuse") : say(" until {} opens", listOf(found.fuses)));
    finding.why = say("A battery heats a shorted wire until its insulation burns.");
    finding.remedies = {
        {say("Take out the wire that leads past the load, or put the load into the way."), {}}};
    return finding;
}

/// The contact on a way that is nearest to minus, or null.
const Branch* lastContact(const Survey& survey, const Way& way) {
    const auto found = std::find_if(way.rbegin(), way.rend(), [&](const LeadStep& step) {
        return step.branch && survey.branches()[*step.branch].sort == BranchSort::Contact;
    });
    return found == way.rend() ? nullptr : &survey.branches()[*found->branch];
}

/// Several where outputs pull several lines to plus and to ground: each ends over another contact.
std::vector<Way> shortsOf(const Survey& survey, const Branch& source) {
    std::vector<Way> shorts;
    Contacts leftOut;
    while (shorts.size() < kMostShorts) {
        auto way = easiestShort(survey, source, leftOut);
        if (!way) {
            break;
        }
        const Branch* last = lastContact(survey, *way);
        shorts.push_back(std::move(*way));
        if (last == nullptr) {
            break; // plus lies on minus whatever closes
        }
        leftOut.insert(last);
    }
    return shorts;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const Branch& source : survey.branches()) {
        if (source.sort == BranchSort::Source) {
            for (const Way& way : shortsOf(survey, source)) {
                findings.push_back(findingFor(rule, survey, source, way));
            }
        }
    }
    return findings;
}

} // namespace

extern const Rule kSupplyShort{"supply-short",
                               words("Short across the supply"),
                               SignalWord::Danger,
                               words("common practice, no published source"),
                               false,
                               check};

} // namespace pumpwright
