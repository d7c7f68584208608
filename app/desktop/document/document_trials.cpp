#include "app/desktop/document/document.h"
#include "app/desktop/document/edit_command.h"
#include "app/desktop/shown_text.h"

#include <fmt/format.h>

#include <cassert>

namespace pumpwright {
namespace {

/// A change about the same object that brings it to how it is in another circuit.
struct AsIn {
    const Circuit& circuit;

    template <class Key, class Object>
    Change put(const std::map<Key, Object>& objects, const Key& id) const {
        const auto found = objects.find(id);
        return Put<Key, Object>{id, found == objects.end() ? nullptr
                                                           : std::make_shared<const Object>(found->second)};
    }
    template <class Section>
    Change section(const Section& section) const {
        return Replace<Section>{std::make_shared<const Section>(section)};
    }

    Change operator()(const Put<PartId, Part>& one) const { return put(circuit.parts, one.id); }
    Change operator()(const Put<WireId, Wire>& one) const { return put(circuit.wires, one.id); }
    Change operator()(const Put<HoseId, Hose>& one) const { return put(circuit.hoses, one.id); }
    Change operator()(const Put<std::string, Trial>& one) const { return put(circuit.trials, one.id); }
    Change operator()(const Replace<DrivePlan>&) const { return section(circuit.plan); }
    Change operator()(const Replace<TitleBlock>&) const { return section(circuit.title); }
    Change operator()(const Replace<ProjectLimits>&) const { return section(circuit.limits); }
    Change operator()(const Replace<Waivers>&) const { return section(circuit.waivers); }
};

std::string freeTrialId(const Circuit& circuit) {
    for (int number = 1;; ++number) {
        const std::string id = fmt::format("t{:02}", number);
        if (!circuit.trials.contains(id)) {
            return id;
        }
    }
}

} // namespace

void Document::makeTrialOfLast(int steps) {
    assert(steps >= 1 && steps <= m_undoStack.index());
    Circuit before = m_circuit;
    Edit back;
    Trial trial;
    for (int step = m_undoStack.index() - 1; step >= m_undoStack.index() - steps; --step) {
        const auto& command = dynamic_cast<const EditCommand&>(*m_undoStack.command(step));
        for (const Change& change : command.edit().changes) {
            trial.edit.changes.push_back(std::visit(AsIn{m_circuit}, change));
        }
        applyEdit(before, command.edit());
        trial.name = command.text().toStdString();
    }
    for (const Change& change : trial.edit.changes) {
        back.changes.push_back(std::visit(AsIn{before}, change));
    }
    trial.edit.name = trial.name;
    back.name = tr("Make a trial: %1").arg(shown(trial.name)).toStdString();
    back.changes.push_back(
        Put<std::string, Trial>{freeTrialId(m_circuit), std::make_shared<const Trial>(trial)});
    apply(back);
}

void Document::takeTrial(const std::string& id) {
    const Trial& trial = m_circuit.trials.at(id);
    apply({tr("Take the trial: %1").arg(shown(trial.name)).toStdString(), trial.edit.changes});
}

} // namespace pumpwright
