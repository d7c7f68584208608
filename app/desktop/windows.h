#pragma once

#include "core/files/catalogue.h"

#include <QList>
#include <QObject>

namespace pumpwright {

class MainWindow;
class Preferences;

/// All windows of the program. Each deletes itself when it is closed; the program ends with the last.
class Windows final : public QObject {
    Q_OBJECT

public:
    Windows(Catalogue catalogue, Preferences& preferences, QObject* parent = nullptr);
    ~Windows() override;

    /// A new window, beside the one that is active.
    MainWindow& openNew();
    /// Where the file is open already its window comes forward; an empty window without changes takes it;
    /// else a new one does. For an empty path, a new window.
    MainWindow& open(const QString& file);

    const QList<MainWindow*>& all() const { return m_windows; }

private:
    MainWindow* windowFor(const QString& file) const;

    Catalogue m_catalogue;
    Preferences& m_preferences;
    QList<MainWindow*> m_windows;
};

} // namespace pumpwright
