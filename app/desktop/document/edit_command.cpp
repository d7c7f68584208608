#include "app/desktop/document/edit_command.h"

#include "app/desktop/document/document.h"
#include "app/desktop/shown_text.h"

#include <algorithm>
#include <set>

namespace pumpwright {
namespace {

/// A single & would become a keyboard mark of the menu.
QString menuText(const std::string& name) {
    return shown(name).replace(QLatin1Char('&'), QStringLiteral("&&"));
}

using Target = std::pair<std::size_t, std::string>;

/// What a change is about; two changes with the same target overwrite each other.
struct TargetText {
    template <class Key, class Object>
    std::string operator()(const Put<Key, Object>& put) const {
        if constexpr (std::is_same_v<Key, std::string>) {
            return put.id;
        } else {
            return put.id.text;
        }
    }
    template <class Section>
    std::string operator()(const Replace<Section>&) const {
        return {};
    }
};

/// Of several changes to one target only the last counts: typing a long text stays one small step.
std::vector<Change> lastOfEachTarget(const std::vector<Change>& changes) {
    std::set<Target> seen;
    std::vector<Change> kept;
    for (auto change = changes.rbegin(); change != changes.rend(); ++change) {
        if (seen.insert({change->index(), std::visit(TargetText{}, *change)}).second) {
            kept.push_back(*change);
        }
    }
    std::reverse(kept.begin(), kept.end());
    return kept;
}

struct Differs {
    const Circuit& circuit;

    template <class Key, class Object>
    bool differs(const std::map<Key, Object>& objects, const Put<Key, Object>& put) const {
        const auto found = objects.find(put.id);
        if (found == objects.end() || !put.object) {
            return (found != objects.end()) != (put.object != nullptr);
        }
        return !(found->second == *put.object);
    }

    bool operator()(const Put<PartId, Part>& put) const { return differs(circuit.parts, put); }
    bool operator()(const Put<WireId, Wire>& put) const { return differs(circuit.wires, put); }
    bool operator()(const Put<HoseId, Hose>& put) const { return differs(circuit.hoses, put); }
    bool operator()(const Put<std::string, Trial>& put) const { return differs(circuit.trials, put); }
    bool operator()(const Replace<DrivePlan>& one) const { return !(circuit.plan == *one.section); }
    bool operator()(const Replace<TitleBlock>& one) const { return !(circuit.title == *one.section); }
    bool operator()(const Replace<ProjectLimits>& one) const { return !(circuit.limits == *one.section); }
    bool operator()(const Replace<Waivers>& one) const { return !(circuit.waivers == *one.section); }
};

} // namespace

bool changesAnything(const Circuit& circuit, const Edit& edit) {
    const std::vector<Change> changes = lastOfEachTarget(edit.changes);
    return std::any_of(changes.begin(), changes.end(),
                       [&](const Change& change) { return std::visit(Differs{circuit}, change); });
}

EditCommand::EditCommand(Document& document, const Edit& edit, const QString& mergeKey)
    : QUndoCommand(menuText(edit.name)), m_document(document), m_edit(edit), m_mergeKey(mergeKey) {}

void EditCommand::undo() {
    m_edit = m_document.swap(m_edit);
}

void EditCommand::redo() {
    m_edit = m_document.swap(m_edit);
}

int EditCommand::id() const {
    return m_mergeKey.isEmpty() ? -1 : 1;
}

bool EditCommand::mergeWith(const QUndoCommand* next) {
    const auto* later = dynamic_cast<const EditCommand*>(next);
    if (later == nullptr || later->m_mergeKey != m_mergeKey) {
        return false;
    }
    // Both have been made, so both hold inverses: to go back, the later one comes first.
    std::vector<Change> changes = later->m_edit.changes;
    changes.insert(changes.end(), m_edit.changes.begin(), m_edit.changes.end());
    m_edit.changes = lastOfEachTarget(changes);
    setText(later->text());
    setObsolete(!changesAnything(m_document.circuit(), m_edit));
    return true;
}

} // namespace pumpwright
