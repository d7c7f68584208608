#pragma once

#include "app/desktop/panels/quantity_text.h"

#include <QObject>
#include <QSettings>
#include <QStringList>

namespace pumpwright {

/// What the program remembers about its user, in one file in the user's settings folder.
class Preferences final : public QObject {
    Q_OBJECT

public:
    /// Keeps everything in the given file; by default in the user's settings folder.
    explicit Preferences(const QString& file = {}, QObject* parent = nullptr);

    VacuumUnits vacuumUnits() const;
    bool inchesOfMercuryFirst() const;
    void setInchesOfMercuryFirst(bool first);

    /// Nothing moves by itself.
    bool lessMotion() const;
    void setLessMotion(bool less);

    bool cautionsUnderstood() const;
    void setCautionsUnderstood();

    /// Files opened or saved, the latest first; those that are gone are left out.
    QStringList recentFiles() const;
    void addRecentFile(const QString& path);
    void clearRecentFiles();

    /// Where work that is not saved yet is kept: beside the given settings file, else in the user's data
    /// folder.
    QString unsavedFolder() const;
    /// Where windows say which file they work on, beside it.
    QString claimsFolder() const;

    /// Where the window was and how its panels stood.
    QByteArray windowGeometry() const;
    QByteArray windowState() const;
    void keepWindow(const QByteArray& geometry, const QByteArray& state);

Q_SIGNALS:
    void changed();

private:
    QString m_file;
    mutable QSettings m_settings;
};

} // namespace pumpwright
