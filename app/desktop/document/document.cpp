#include "app/desktop/document/document.h"

#include "app/desktop/document/edit_command.h"
#include "core/parts/lost_ends.h"

namespace pumpwright {
namespace {

/// Notes what a change is about.
struct Noting {
    ChangedObjects& objects;

    void operator()(const Put<PartId, Part>& put) const { objects.parts.push_back(put.id); }
    void operator()(const Put<WireId, Wire>& put) const { objects.wires.push_back(put.id); }
    void operator()(const Put<HoseId, Hose>& put) const { objects.hoses.push_back(put.id); }
    void operator()(const Replace<DrivePlan>&) const { objects.plan = true; }
    template <class Other>
    void operator()(const Other&) const {
        objects.other = true;
    }
};

} // namespace

Document::Document(QObject* parent) : QObject(parent) {
    connect(&m_undoStack, &QUndoStack::cleanChanged, this, &Document::fileChanged);
}

void Document::apply(const Edit& edit) {
    applyMerging(edit, {});
}

void Document::applyMerging(const Edit& edit, const QString& mergeKey) {
    const Edit whole = editWithLostEnds(m_circuit, edit);
    if (changesAnything(m_circuit, whole)) {
        m_undoStack.push(new EditCommand(*this, whole, mergeKey));
    }
}

Edit Document::swap(const Edit& edit) {
    ChangedObjects objects;
    for (const Change& change : edit.changes) {
        std::visit(Noting{objects}, change);
    }
    Edit inverse = applyEdit(m_circuit, edit);
    Q_EMIT changed(objects);
    return inverse;
}

void Document::startNew(const Circuit& circuit) {
    replaceAll(circuit, {});
}

void Document::restore(const Circuit& circuit, const QString& path) {
    replaceAll(circuit, path);
    m_undoStack.resetClean();
}

void Document::replaceAll(const Circuit& circuit, const QString& path) {
    m_circuit = circuit;
    m_path = path;
    m_undoStack.clear();
    ChangedObjects objects;
    objects.all = true;
    Q_EMIT changed(objects);
    Q_EMIT fileChanged();
}

} // namespace pumpwright
