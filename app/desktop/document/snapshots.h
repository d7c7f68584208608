#pragma once

#include "core/circuit/circuit.h"
#include "core/units/result.h"

#include <QDateTime>
#include <QLockFile>
#include <QObject>
#include <QThreadPool>
#include <QTimer>

#include <optional>

namespace pumpwright {

class Document;

/// Keeps what is not saved yet in a file of its own, so that a crash or a power cut costs a second of work.
/// The file is written on another thread while changes go on, and goes when there is nothing left to lose.
class Snapshots final : public QObject {
    Q_OBJECT

public:
    /// Snapshots of all windows lie in one folder; each window's own is locked while it is open.
    Snapshots(Document& document, const QString& folder, QObject* parent = nullptr);
    ~Snapshots() override;

    /// The file of this window; it exists while there are unsaved changes.
    QString file() const;

private:
    void noteChange();
    void write();
    void forget();

    Document& m_document;
    QString m_base; ///< path without suffix
    QLockFile m_lock;
    QTimer m_due;
    QThreadPool m_writer; ///< one thread: snapshots are written in their order
};

/// Unsaved work that a program left behind when it ended badly.
struct LostWork {
    QString file;
    QString origin; ///< the circuit file it belongs to; empty where it has none yet
    QDateTime at;
};

/// The latest first. Work of windows that are still open is nobody else's.
QList<LostWork> lostWork(const QString& folder);

struct RecoveredWork {
    Circuit circuit;
    QString triedFile; ///< to be removed once the circuit is safe again
};

/// Reads lost work. A file that was tried before and brought the program down is set aside, never tried a
/// third time; the error then names it.
[[nodiscard]] Result<RecoveredWork> recover(const LostWork& work);

/// Removes it for good.
void discard(const LostWork& work);

} // namespace pumpwright
