#pragma once

#include "core/circuit/circuit.h"
#include "core/units/result.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

namespace pumpwright {

/// Says which objects of the circuit an edit touched.
struct ChangedObjects {
    std::vector<PartId> parts;
    std::vector<WireId> wires;
    std::vector<HoseId> hoses;
    bool plan = false;
    bool other = false; ///< title block, limits, waivers, trials
    bool all = false;   ///< another circuit altogether: reread everything
};

/// The open circuit, its file and its history. The only place that changes the circuit.
class Document final : public QObject {
    Q_OBJECT

public:
    explicit Document(QObject* parent = nullptr);

    const Circuit& circuit() const { return m_circuit; }
    QUndoStack& undoStack() { return m_undoStack; }

    /// Makes the edit as one step of the history. An edit that changes nothing leaves no step;
    /// what loses its place in the circuit by it (editWithLostEnds()) goes in the same step.
    void apply(const Edit& edit);
    /// As apply(), but joins the step before where that has the same key: typing in one field, nudging one
    /// part.
    void applyMerging(const Edit& edit, const QString& mergeKey);

    /// Makes a trial of the last steps of the history: the circuit is as before them, and they are kept as
    /// the trial's edit. One step itself. `steps` from 1 to undoStack().index().
    void makeTrialOfLast(int steps);
    /// Makes a trial's edit in the circuit; the trial stays.
    void takeTrial(const std::string& id);

    /// Replaces circuit, file and history. On failure nothing changes.
    [[nodiscard]] Result<void> open(const QString& path);
    /// A circuit that belongs to no file yet.
    void startNew(const Circuit& circuit = {});
    /// Unsaved work that was found again: it counts as modified.
    void restore(const Circuit& circuit, const QString& path);
    [[nodiscard]] Result<void> save(const QString& path);

    const QString& path() const { return m_path; }
    bool isModified() const { return !m_undoStack.isClean(); }

Q_SIGNALS:
    void changed(const pumpwright::ChangedObjects& objects);
    void fileChanged(); ///< path or modified mark

private:
    friend class EditCommand;
    Edit swap(const Edit& edit);
    void replaceAll(const Circuit& circuit, const QString& path);

    Circuit m_circuit;
    QString m_path;
    QUndoStack m_undoStack;
};

} // namespace pumpwright
