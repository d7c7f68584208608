#include "app/desktop/preferences.h"

#include "app/desktop/panels/wire_colours.h"
#include "core/parts/conductor.h"
#include "core/parts/document_fields.h"
#include "core/units/money.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

#include <array>

namespace pumpwright {
namespace {

constexpr int kMostRecentFiles = 10;

// stored: do not rename
const QString kVacuumUnit = QStringLiteral("units/vacuum");
const QString kWireUnit = QStringLiteral("units/wire");
const QString kCurrency = QStringLiteral("units/currency");
const QString kPaper = QStringLiteral("units/paper");
const QString kWire = QStringLiteral("newWire/");
const QString kLimits = QStringLiteral("newLimits/");
const QString kTheme = QStringLiteral("window/theme");
const QString kWheelScrolls = QStringLiteral("window/wheelScrolls");
const QString kLessMotion = QStringLiteral("window/lessMotion");
const QString kCautions = QStringLiteral("cautions/understood");
const QString kRecent = QStringLiteral("files/recent");
const QString kGeometry = QStringLiteral("window/geometry");
const QString kState = QStringLiteral("window/state");

QString usersFile() {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation);
    return QDir(folder).filePath(QStringLiteral("pumpwright/pumpwright.ini"));
}

/// A limit and where it is kept.
struct KeptLimit {
    ParameterSpec spec;
    double ProjectLimits::*member;
};

const std::array<KeptLimit, 6>& keptLimits() {
    static const std::array<KeptLimit, 6> kKept{
        {{field::kVoltageDropShare, &ProjectLimits::voltageDropShare},
         {field::kLimitAmbient, &ProjectLimits::ambient_K},
         {field::kContinuousFuseShare, &ProjectLimits::continuousFuseShare},
         {field::kLowestSupply, &ProjectLimits::lowestSupply_V},
         {field::kParked, &ProjectLimits::parked_s},
         {field::kDrivenPerYear, &ProjectLimits::drivenPerYear_s}}};
    return kKept;
}

QString keyOf(const ParameterSpec& spec) {
    return kLimits + QString::fromLatin1(spec.key.data(), static_cast<qsizetype>(spec.key.size()));
}

/// What a settings file says may be anything: what is no number in its range counts as not said.
double keptNumber(const QSettings& settings, const QString& key, double low, double high, double standard) {
    bool isNumber = false;
    const double value = settings.value(key).toDouble(&isNumber);
    return isNumber && value >= low && value <= high ? value : standard;
}

double keptNumber(const QSettings& settings, const QString& key, const ParameterSpec& spec, double standard) {
    return keptNumber(settings, key, spec.low, spec.high, standard);
}

} // namespace

Preferences::Preferences(const QString& file, QObject* parent)
    : QObject(parent), m_file(file.isEmpty() ? usersFile() : file), m_settings(m_file, QSettings::IniFormat) {
}

QString Preferences::dataFolder(const QString& name) const {
    const QString data = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation);
    return m_file == usersFile() ? QDir(data).filePath(QStringLiteral("pumpwright/") + name)
                                 : QFileInfo(m_file).dir().filePath(name);
}

QString Preferences::claimsFolder() const {
    return dataFolder(QStringLiteral("open"));
}

QString Preferences::unsavedFolder() const {
    return dataFolder(QStringLiteral("unsaved"));
}

QString Preferences::templatesFolder() const {
    return dataFolder(QStringLiteral("templates"));
}

/// The first of what is possible where nothing, or nothing possible, is kept.
QString Preferences::chosen(const QString& key, const QStringList& possible) const {
    const QString kept = m_settings.value(key).toString();
    return possible.contains(kept) ? kept : possible.front();
}

void Preferences::choose(const QString& key, const QVariant& value) {
    if (m_settings.value(key) != value) {
        m_settings.setValue(key, value);
        Q_EMIT changed();
    }
}

QString Preferences::vacuumUnit() const {
    return chosen(kVacuumUnit, {QStringLiteral("kPa"), QStringLiteral("inHg"), QStringLiteral("mbar")});
}

void Preferences::setVacuumUnit(const QString& unit) {
    choose(kVacuumUnit, unit);
}

QString Preferences::wireUnit() const {
    return chosen(kWireUnit, {QStringLiteral("mm²"), QStringLiteral("AWG")});
}

void Preferences::setWireUnit(const QString& unit) {
    choose(kWireUnit, unit);
}

ShownUnits Preferences::units() const {
    ShownUnits units;
    if (vacuumUnit() == QLatin1String("inHg")) {
        units.vacuum = "inHg";
        units.secondVacuum = "kPa";
    } else if (vacuumUnit() == QLatin1String("mbar")) {
        units.vacuum = "mbar";
    }
    units.wire = wireUnit() == QLatin1String("AWG") ? "AWG" : "mm²";
    return units;
}

QString Preferences::currency() const {
    const QString code = m_settings.value(kCurrency).toString();
    return isCurrencyCode(code.toStdString()) ? code : QString::fromStdString(Circuit().currency);
}

void Preferences::setCurrency(const QString& code) {
    choose(kCurrency, code);
}

QString Preferences::paper() const {
    return chosen(kPaper, {QStringLiteral("A4"), QStringLiteral("A3"), QStringLiteral("Letter")});
}

void Preferences::setPaper(const QString& size) {
    choose(kPaper, size);
}

Wire Preferences::newWire() const {
    Wire wire;
    const std::string insulation =
        m_settings.value(kWire + QStringLiteral("insulation")).toString().toStdString();
    const QString colour = m_settings.value(kWire + QStringLiteral("colour")).toString();
    wire.colour =
        colour.isEmpty() || !wireColourRefusal(colour).isEmpty() ? wire.colour : colour.toStdString();
    wire.insulation = findInsulation(insulation) != nullptr ? insulation : wire.insulation;
    wire.area_m2 = keptNumber(m_settings, kWire + QStringLiteral("area_m2"), field::kWireArea, wire.area_m2);
    wire.length_m =
        keptNumber(m_settings, kWire + QStringLiteral("length_m"), field::kWireLength, wire.length_m);
    return wire;
}

void Preferences::setNewWire(const Wire& wire) {
    m_settings.setValue(kWire + QStringLiteral("colour"), QString::fromStdString(wire.colour));
    m_settings.setValue(kWire + QStringLiteral("area_m2"), wire.area_m2);
    m_settings.setValue(kWire + QStringLiteral("length_m"), wire.length_m);
    m_settings.setValue(kWire + QStringLiteral("insulation"), QString::fromStdString(wire.insulation));
    Q_EMIT changed();
}

ProjectLimits Preferences::newLimits() const {
    ProjectLimits limits;
    for (const KeptLimit& kept : keptLimits()) {
        limits.*kept.member = keptNumber(m_settings, keyOf(kept.spec), kept.spec, limits.*kept.member);
    }
    const auto count = [this](const char* key, double low, double high, int standard) {
        return static_cast<int>(keptNumber(m_settings, kLimits + QLatin1String(key), low, high, standard));
    };
    limits.leastBundled = count("leastBundled", 1, field::kMostBundled, limits.leastBundled);
    limits.reservePresses = count("reservePresses", 0, field::kMostReserve, limits.reservePresses);
    return limits;
}

void Preferences::setNewLimits(const ProjectLimits& limits) {
    for (const KeptLimit& kept : keptLimits()) {
        m_settings.setValue(keyOf(kept.spec), limits.*kept.member);
    }
    m_settings.setValue(kLimits + QStringLiteral("leastBundled"), limits.leastBundled);
    m_settings.setValue(kLimits + QStringLiteral("reservePresses"), limits.reservePresses);
    Q_EMIT changed();
}

Circuit Preferences::newCircuit() const {
    Circuit circuit;
    circuit.currency = currency().toStdString();
    circuit.limits = newLimits();
    return circuit;
}

QString Preferences::themeName() const {
    return chosen(kTheme, {QStringLiteral("desktop"), QStringLiteral("light"), QStringLiteral("dark")});
}

void Preferences::setThemeName(const QString& name) {
    choose(kTheme, name);
}

bool Preferences::wheelScrolls() const {
    return m_settings.value(kWheelScrolls, false).toBool();
}

void Preferences::setWheelScrolls(bool scrolls) {
    choose(kWheelScrolls, scrolls);
}

void Preferences::forgetChoices() {
    for (const QString& key :
         {kVacuumUnit, kWireUnit, kCurrency, kPaper, kTheme, kWheelScrolls, kLessMotion}) {
        m_settings.remove(key);
    }
    for (const QString& group : {kWire, kLimits}) {
        m_settings.remove(group.chopped(1)); // with all that is kept below it
    }
    Q_EMIT changed();
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
