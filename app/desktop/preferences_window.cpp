#include "app/desktop/preferences_window.h"

#include "app/desktop/panels/quantity_field.h"
#include "app/desktop/panels/wire_colours.h"
#include "app/desktop/preferences.h"
#include "core/parts/conductor.h"
#include "core/parts/document_fields.h"
#include "core/units/money.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QTabWidget>
#include <QVBoxLayout>

#include <cmath>

namespace pumpwright {
namespace {

QFormLayout* newForm(QWidget* page) {
    auto* form = new QFormLayout(page);
    form->setContentsMargins(12, 12, 12, 12);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    return form;
}

QLabel* newNote(const QString& text, QWidget* parent) {
    auto* note = new QLabel(text, parent);
    note->setTextFormat(Qt::PlainText);
    note->setWordWrap(true);
    return note;
}

} // namespace

PreferencesWindow::PreferencesWindow(Preferences& preferences, QWidget* parent)
    : QDialog(parent), m_preferences(preferences), m_pages(new QTabWidget(this)) {
    setWindowTitle(tr("Preferences"));
    m_pages->setAccessibleName(tr("Preferences"));
    m_pages->addTab(unitsPage(), tr("Units and paper"));
    m_pages->addTab(newCircuitsPage(), tr("New circuits"));
    m_pages->addTab(windowPage(), tr("Window"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    QPushButton* standard = buttons->addButton(tr("Back to standard"), QDialogButtonBox::ResetRole);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_pages, 1);
    column->addWidget(buttons);
    resize(460, 520);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    connect(standard, &QPushButton::clicked, &m_preferences, &Preferences::forgetChoices);
    connect(&m_preferences, &Preferences::changed, this, &PreferencesWindow::showAll);
    showAll();
}

void PreferencesWindow::showAll() {
    for (const auto& show : m_show) {
        show();
    }
}

QComboBox* PreferencesWindow::addChoice(QFormLayout& form, const QString& name,
                                        const std::vector<Choice>& choices,
                                        const std::function<QString()>& read,
                                        const std::function<void(const QString&)>& write) {
    auto* box = new QComboBox(this);
    box->setAccessibleName(name);
    for (const Choice& choice : choices) {
        box->addItem(choice.text, choice.value);
    }
    connect(box, &QComboBox::activated, this, [box, write] { write(box->currentData().toString()); });
    m_show.push_back([box, read] { box->setCurrentIndex(std::max(0, box->findData(read()))); });
    form.addRow(name, box);
    return box;
}

void PreferencesWindow::addQuantity(QFormLayout& form, const QString& name, const QuantityRange& range,
                                    const std::function<double()>& read,
                                    const std::function<void(double)>& write) {
    auto* field = new QuantityField(name, range, m_preferences.units(), this);
    connect(field, &QuantityField::edited, this, write);
    m_show.push_back([this, field, read] {
        field->setUnits(m_preferences.units());
        field->showValue(read());
    });
    form.addRow(name, field);
}

QWidget* PreferencesWindow::unitsPage() {
    auto* page = new QWidget(this);
    QFormLayout& form = *newForm(page);
    addChoice(
        form, tr("Vacuum"),
        {{tr("kPa"), QStringLiteral("kPa")},
         {tr("inHg"), QStringLiteral("inHg")},
         {tr("mbar"), QStringLiteral("mbar")}},
        [this] { return m_preferences.vacuumUnit(); },
        [this](const QString& unit) { m_preferences.setVacuumUnit(unit); });
    addChoice(
        form, tr("Wire sizes"), {{tr("mm²"), QStringLiteral("mm²")}, {tr("AWG"), QStringLiteral("AWG")}},
        [this] { return m_preferences.wireUnit(); },
        [this](const QString& unit) { m_preferences.setWireUnit(unit); });
    addChoice(
        form, tr("Paper"),
        {{tr("A4"), QStringLiteral("A4")},
         {tr("A3"), QStringLiteral("A3")},
         {tr("Letter"), QStringLiteral("Letter")}},
        [this] { return m_preferences.paper(); },
        [this](const QString& paper) { m_preferences.setPaper(paper); });
    addCurrency(form);
    form.addRow(
        newNote(tr("A new circuit has its prices in this currency. Prices of the catalogue in another "
                   "one are left out."),
                page));
    return page;
}

void PreferencesWindow::addCurrency(QFormLayout& form) {
    auto* field = new QLineEdit(this);
    field->setAccessibleName(tr("Currency"));
    field->setMaxLength(3);
    field->setPlaceholderText(tr("Three letters, as EUR"));
    connect(field, &QLineEdit::textEdited, this, [this](const QString& text) {
        if (isCurrencyCode(text.toUpper().toStdString())) {
            m_preferences.setCurrency(text.toUpper());
        }
    });
    connect(field, &QLineEdit::editingFinished, this,
            [this, field] { field->setText(m_preferences.currency()); });
    m_show.push_back([this, field] {
        if (!field->hasFocus()) {
            field->setText(m_preferences.currency());
        }
    });
    form.addRow(tr("Currency"), field);
}

QWidget* PreferencesWindow::newCircuitsPage() {
    auto* page = new QWidget;
    QFormLayout& form = *newForm(page);
    form.addRow(newNote(tr("A wire as it is drawn:"), page));
    addWire(form);
    form.addRow(newNote(tr("Limits of a circuit that is begun new, unless it says otherwise:"), page));
    addLimits(form);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus); // it follows the focus of what it holds
    scroll->setAccessibleName(tr("New circuits"));
    scroll->setWidget(page);
    return scroll;
}

void PreferencesWindow::addWire(QFormLayout& form) {
    const auto change = [this](auto member, auto value) {
        Wire wire = m_preferences.newWire();
        wire.*member = std::move(value);
        m_preferences.setNewWire(wire);
    };
    std::vector<Choice> colours;
    for (const WireColourName& colour : wireColourNames()) {
        colours.push_back({QStringLiteral("%1 %2").arg(colour.letters, colour.name), colour.letters});
    }
    addChoice(
        form, tr("Colour"), colours, [this] { return editable(m_preferences.newWire().colour); },
        [change](const QString& letters) { change(&Wire::colour, letters.toStdString()); });
    addQuantity(
        form, tr("Gauge"), rangeOf(field::kWireArea), [this] { return m_preferences.newWire().area_m2; },
        [change](double value) { change(&Wire::area_m2, value); });
    addQuantity(
        form, tr("Length"), rangeOf(field::kWireLength), [this] { return m_preferences.newWire().length_m; },
        [change](double value) { change(&Wire::length_m, value); });
    std::vector<Choice> insulations;
    for (const InsulationClass& one : insulationClasses()) {
        insulations.push_back({translatedWords(one.label), shown(one.id)});
    }
    addChoice(
        form, tr("Insulation"), insulations, [this] { return editable(m_preferences.newWire().insulation); },
        [change](const QString& id) { change(&Wire::insulation, id.toStdString()); });
}

void PreferencesWindow::addLimits(QFormLayout& form) {
    const auto add = [&](const ParameterSpec& spec, double ProjectLimits::*member) {
        addQuantity(
            form, translatedWords(spec.label), rangeOf(spec),
            [this, member] { return m_preferences.newLimits().*member; },
            [this, member](double value) {
                ProjectLimits limits = m_preferences.newLimits();
                limits.*member = value;
                m_preferences.setNewLimits(limits);
            });
    };
    add(field::kVoltageDropShare, &ProjectLimits::voltageDropShare);
    add(field::kLimitAmbient, &ProjectLimits::ambient_K);
    add(field::kContinuousFuseShare, &ProjectLimits::continuousFuseShare);
    add(field::kLowestSupply, &ProjectLimits::lowestSupply_V);
    add(field::kParked, &ProjectLimits::parked_s);
    add(field::kDrivenPerYear, &ProjectLimits::drivenPerYear_s);
    const auto addCount = [&](const QString& name, double low, double high, int ProjectLimits::*member) {
        addQuantity(
            form, name, {QuantityKind::Number, low, high},
            [this, member] { return static_cast<double>(m_preferences.newLimits().*member); },
            [this, member](double value) {
                ProjectLimits limits = m_preferences.newLimits();
                limits.*member = static_cast<int>(std::lround(value));
                m_preferences.setNewLimits(limits);
            });
    };
    addCount(tr("Loaded wires in a bundle, at least"), 1, field::kMostBundled, &ProjectLimits::leastBundled);
    addCount(tr("Presses with assist after the pump has died"), 0, field::kMostReserve,
             &ProjectLimits::reservePresses);
}

QWidget* PreferencesWindow::windowPage() {
    auto* page = new QWidget(this);
    QFormLayout& form = *newForm(page);
    addChoice(
        form, tr("Colours"),
        {{tr("As the desktop"), QStringLiteral("desktop")},
         {tr("Light"), QStringLiteral("light")},
         {tr("Dark"), QStringLiteral("dark")}},
        [this] { return m_preferences.themeName(); },
        [this](const QString& name) { m_preferences.setThemeName(name); });
    addChoice(
        form, tr("A mouse wheel"),
        {{tr("Zooms; with Ctrl too"), QStringLiteral("zooms")},
         {tr("Scrolls; with Ctrl it zooms"), QStringLiteral("scrolls")}},
        [this] { return m_preferences.wheelScrolls() ? QStringLiteral("scrolls") : QStringLiteral("zooms"); },
        [this](const QString& use) { m_preferences.setWheelScrolls(use == QLatin1String("scrolls")); });
    addChoice(
        form, tr("Motion"),
        {{tr("The drive is played smoothly"), QStringLiteral("all")},
         {tr("Less: playing goes from event to event"), QStringLiteral("less")}},
        [this] { return m_preferences.lessMotion() ? QStringLiteral("less") : QStringLiteral("all"); },
        [this](const QString& use) { m_preferences.setLessMotion(use == QLatin1String("less")); });
    return page;
}

} // namespace pumpwright
