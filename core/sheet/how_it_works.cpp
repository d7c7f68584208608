#include "core/sheet/how_it_works.h"

#include "core/checks/set_point.h"
#include "core/parts/part_kind.h"
#include "core/sheet/cells.h"
#include "core/sheet/references.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

using Texts = std::vector<std::string>;

/// "F1", "F1 and K1", "F1, S1 and K1"
std::string listed(const Texts& texts) {
    std::string list;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        list += i == 0 ? "" : i + 1 < texts.size() ? ", " : " and ";
        list += texts[i];
    }
    return list;
}

/// The labels of what a part is set to, in the order of its Nameplate.
Texts setChoices(const Part& part) {
    Texts labels;
    for (const ChoiceSpec& choice : kindOf(part).choices()) {
        for (const ChoiceSpec::Option& option : choice.options) {
            if (option.id == kindOf(part).choice(part, choice.key)) {
                labels.emplace_back(option.label);
            }
        }
    }
    return labels;
}

class Teller {
public:
    Teller(const Survey& survey, const Workings& workings) : m_survey(survey), m_workings(workings) {}

    std::string feedSentence() const;
    std::string switchSentence() const;
    std::string triggerSentence() const;
    std::string vacuumSentence() const;
    std::string warningSentence() const;

private:
    const std::string& reference(const PartId& id) const { return m_survey.part(id).reference; }
    std::string name(const PartId& id) const { return partName(m_survey.circuit(), id); }

    Texts names(const std::vector<PartId>& ids) const {
        Texts texts;
        for (const PartId& id : ids) {
            texts.push_back(name(id));
        }
        return texts;
    }

    /// "F1 (15 A)", "K1"
    Texts withRatings(const std::vector<PartId>& ids) const {
        Texts texts;
        for (const PartId& id : ids) {
            const auto& fuse = m_survey.features(id).fuse;
            texts.push_back(fuse ? fmt::format("{} ({})", reference(id),
                                               formatQuantity(fuse->rating_A, QuantityKind::Current))
                                 : reference(id));
        }
        return texts;
    }

    std::string sensorText(const PartId& id) const {
        const auto setPoint = setPointOf(m_survey, id);
        return fmt::format("{} closes when the vacuum has fallen to {} and opens when it has risen to {}",
                           name(id), settingText(setPoint->closes_Pa, QuantityKind::GaugeVacuum),
                           settingText(setPoint->opens_Pa, QuantityKind::GaugeVacuum));
    }

    /// "K2 timer (delay on release, 5 s)"
    std::string timerText(const PartId& id) const {
        const Part& part = m_survey.part(id);
        const auto fields = setChoices(part);
        const std::string label = fields.empty() ? "timer" : fields.front();
        return fmt::format("{} ({}, {})", name(id), label,
                           formatQuantity(*setTime_s(part), QuantityKind::Time));
    }

    const Survey& m_survey;
    const Workings& m_workings;
};

std::string Teller::feedSentence() const {
    if (m_workings.pumps.empty()) {
        return "There is no pump in this circuit.";
    }
    const PartId& pump = m_workings.pumps.front();
    const LoadPath* path = feedOf(m_survey, pump);
    if (path == nullptr) {
        return fmt::format("{} can't run: no way leads from a supply to it and back.", name(pump));
    }
    const Texts on = withRatings(partsOnFeed(m_survey, *path));
    const auto ground = groundOf(m_survey, *path);
    return fmt::format("{} gets its current from {}{}, and gives it back {}.", name(pump),
                       name(*path->source),
                       on.empty() ? " without a fuse or switch" : " through " + listed(on),
                       ground ? "over the body at " + reference(*ground) : "over a wire");
}

std::string Teller::switchSentence() const {
    Texts chains;
    for (const PartId& id : m_workings.deciders) {
        const LoadPath* path = feedOf(m_survey, id);
        if (path != nullptr) {
            const Texts on = withRatings(partsOnFeed(m_survey, *path));
            chains.push_back(fmt::format("{} {}", name(id),
                                         on.empty() ? "straight from the supply" : "through " + listed(on)));
        }
    }
    if (!chains.empty()) {
        return fmt::format("What switches it is fed in turn: {}.", listed(chains));
    }
    return m_workings.deciders.empty()
               ? "Nothing switches the pump."
               : fmt::format("The pump's current goes straight through the contacts of {}.",
                             listed(names(m_workings.deciders)));
}

std::string Teller::triggerSentence() const {
    Texts clauses;
    for (const PartId& id : m_workings.sensors) {
        clauses.push_back(sensorText(id));
    }
    if (clauses.empty()) {
        clauses.push_back(m_workings.handles.empty()
                              ? "No switch starts or stops the pump"
                              : "No vacuum switch starts or stops the pump: it follows " +
                                    listed(names(m_workings.handles)));
    } else if (!m_workings.handles.empty()) {
        clauses.push_back(listed(names(m_workings.handles)) + " must be on");
    }
    for (const PartId& id : m_workings.timers) {
        clauses.push_back("a time is added by " + timerText(id));
    }
    return fmt::format("{}.", fmt::join(clauses, "; "));
}

std::string Teller::vacuumSentence() const {
    if (m_workings.pumps.empty() || m_workings.boosters.empty()) {
        return "There is no booster in this circuit that a pump could empty.";
    }
    std::string text = fmt::format("The pump draws air out of {}", listed(names(m_workings.boosters)));
    text += m_workings.checkValves.empty()
                ? "; no check valve keeps the vacuum when it stands still"
                : fmt::format(" through {}, which keeps the vacuum when it stands still",
                              listed(names(m_workings.checkValves)));
    return text + (m_workings.reservoirs.empty()
                       ? "."
                       : fmt::format("; {} holds more of it.", listed(names(m_workings.reservoirs))));
}

std::string Teller::warningSentence() const {
    if (m_workings.warnings.empty()) {
        return "Nothing in this circuit warns the driver when the vacuum is low.";
    }
    Texts clauses;
    for (const WarningDevice& warning : m_workings.warnings) {
        clauses.push_back(fmt::format("{} follows {}", name(warning.part), listed(names(warning.sensors))));
    }
    Texts levels;
    for (const PartId& id : m_workings.warnings.front().sensors) {
        levels.push_back(settingText(setPointOf(m_survey, id)->closes_Pa, QuantityKind::GaugeVacuum));
    }
    return fmt::format("The driver is warned: {}, set to {}.", listed(clauses), listed(levels));
}

} // namespace

std::vector<std::string> howItWorks(const Survey& survey, const Workings& workings) {
    const Teller teller(survey, workings);
    return {teller.feedSentence(), teller.switchSentence(), teller.triggerSentence(), teller.vacuumSentence(),
            teller.warningSentence()};
}

} // namespace pumpwright
