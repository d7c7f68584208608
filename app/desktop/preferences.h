#pragma once

#include "app/desktop/panels/quantity_text.h"
#include "core/circuit/circuit.h"

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

    /// The units in which values are shown, from the two below.
    ShownUnits units() const;
    QString vacuumUnit() const; ///< "kPa", "inHg" or "mbar"
    void setVacuumUnit(const QString& unit);
    QString wireUnit() const; ///< "mm²" or "AWG"
    void setWireUnit(const QString& unit);
    QString currency() const; ///< of new circuits, three letters
    void setCurrency(const QString& code);
    QString paper() const; ///< "A4", "A3" or "Letter"
    void setPaper(const QString& size);

    /// What a wire is like when it is drawn, and what a circuit demands when it is begun.
    Wire newWire() const;
    void setNewWire(const Wire& wire);
    ProjectLimits newLimits() const;
    void setNewLimits(const ProjectLimits& limits);
    /// An empty circuit with these limits, in this currency.
    Circuit newCircuit() const;

    QString themeName() const; ///< "desktop", "light" or "dark"
    void setThemeName(const QString& name);
    /// A mouse wheel scrolls instead of zooming.
    bool wheelScrolls() const;
    void setWheelScrolls(bool scrolls);

    /// Nothing moves by itself.
    bool lessMotion() const;
    void setLessMotion(bool less);

    /// All of the above as it is before anything is chosen.
    void forgetChoices();

    bool cautionsUnderstood() const;
    void setCautionsUnderstood();

    /// Files opened or saved, the latest first; those that are gone are left out.
    QStringList recentFiles() const;
    void addRecentFile(const QString& path);
    void clearRecentFiles();

    /// Where work that is not saved yet is kept: beside the given settings file, else in the user's data
    /// folder.
    QString unsavedFolder() const;
    /// Where the user's templates lie: beside the given settings file, else in the user's data folder.
    QString templatesFolder() const;
    /// Where windows say which file they work on, beside it.
    QString claimsFolder() const;

    /// Where the window was and how its panels stood.
    QByteArray windowGeometry() const;
    QByteArray windowState() const;
    void keepWindow(const QByteArray& geometry, const QByteArray& state);

Q_SIGNALS:
    void changed();

private:
    QString dataFolder(const QString& name) const;
    QString chosen(const QString& key, const QStringList& possible) const;
    void choose(const QString& key, const QVariant& value);

    QString m_file;
    mutable QSettings m_settings;
};

} // namespace pumpwright
