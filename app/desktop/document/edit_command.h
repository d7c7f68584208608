#pragma once

#include "core/circuit/edit.h"

#include <QString>
#include <QUndoCommand>

namespace pumpwright {

class Document;
struct Circuit;

/// The only undo command: holds an edit and swaps it for its inverse, forth and back.
class EditCommand final : public QUndoCommand {
public:
    /// Commands with the same key that is not empty join into one step.
    EditCommand(Document& document, const Edit& edit, const QString& mergeKey);

    void undo() override;
    void redo() override;
    int id() const override;
    bool mergeWith(const QUndoCommand* next) override;
    /// What undo() or redo() would make, whichever is next.
    const Edit& edit() const { return m_edit; }

private:
    Document& m_document;
    Edit m_edit;
    QString m_mergeKey;
};

/// Whether the edit would leave the circuit different.
bool changesAnything(const Circuit& circuit, const Edit& edit);

} // namespace pumpwright
