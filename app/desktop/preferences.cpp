#include "app/desktop/preferences.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace pumpwright {
namespace {

constexpr int kMostRecentFiles = 10;

// stored: do not rename
const QString kVacuumUnit = QStringLiteral("units/vacuumInInchesOfMercury");
const QString kLessMotion = QStringLiteral("window/lessMotion");
const QString kCautions = QStringLiteral("cautions/understood");
const QString kRecent = QStringLiteral("files/recent");
const QString kGeometry = QStringLiteral("window/geometry");
const QString kState = QStringLiteral("window/state");

QString usersFile() {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation);
    return QDir(folder).filePath(QStringLiteral("pumpwright/pumpwright.ini"));
}

} // namespace

Preferences::Preferences(const QString& file, QObject* parent)
    : QObject(parent), m_file(file.isEmpty() ? usersFile() : file), m_settings(m_file, QSettings::IniFormat) {
}

QString Preferences::claimsFolder() const {
    return QFileInfo(unsavedFolder()).dir().filePath(QStringLiteral("open"));
}

QString Preferences::unsavedFolder() const {
    const QString data = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation);
    return m_file == usersFile() ? QDir(data).filePath(QStringLiteral("pumpwright/unsaved"))
                                 : QFileInfo(m_file).dir().filePath(QStringLiteral("unsaved"));
}

bool Preferences::inchesOfMercuryFirst() const {
    return m_settings.value(kVacuumUnit, false).toBool();
}

VacuumUnits Preferences::vacuumUnits() const {
    return inchesOfMercuryFirst() ? VacuumUnits{"inHg", "kPa"} : VacuumUnits{"kPa", "inHg"};
}

void Preferences::setInchesOfMercuryFirst(bool first) {
    if (first != inchesOfMercuryFirst()) {
        m_settings.setValue(kVacuumUnit, first);
        Q_EMIT changed();
    }
}

bool Preferences::lessMotion() const {
    return m_settings.value(kLessMotion, false).toBool();
}

void Preferences::setLessMotion(bool less) {
    if (less != lessMotion()) {
        m_settings.setValue(kLessMotion, less);
        Q_EMIT changed();
    }
}

bool Preferences::cautionsUnderstood() const {
    return m_settings.value(kCautions, false).toBool();
}

void Preferences::setCautionsUnderstood() {
    m_settings.setValue(kCautions, true);
}

QStringList Preferences::recentFiles() const {
    QStringList files = m_settings.value(kRecent).toStringList();
    files.removeIf([](const QString& path) { return !QFileInfo::exists(path); });
    return files;
}

void Preferences::addRecentFile(const QString& path) {
    const QString whole = QFileInfo(path).absoluteFilePath();
    QStringList files = m_settings.value(kRecent).toStringList();
    files.removeAll(whole);
    files.prepend(whole);
    while (files.size() > kMostRecentFiles) {
        files.removeLast();
    }
    m_settings.setValue(kRecent, files);
    Q_EMIT changed();
}

void Preferences::clearRecentFiles() {
    m_settings.remove(kRecent);
    Q_EMIT changed();
}

QByteArray Preferences::windowGeometry() const {
    return m_settings.value(kGeometry).toByteArray();
}

QByteArray Preferences::windowState() const {
    return m_settings.value(kState).toByteArray();
}

void Preferences::keepWindow(const QByteArray& geometry, const QByteArray& state) {
    m_settings.setValue(kGeometry, geometry);
    m_settings.setValue(kState, state);
}

} // namespace pumpwright
