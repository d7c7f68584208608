#include "app/desktop/panels/hand_panel.h"

#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/hand_operation.h"
#include "app/desktop/panels/quantity_field.h"
#include "app/desktop/panels/vacuum_gauge.h"
#include "app/desktop/preferences.h"
#include "core/parts/document_fields.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kTimeStep_s = 0.1;
constexpr double kKeepsUp = 0.9; ///< a drive slower than this share of real time is said to be slow

/// Vacuum where the brake gets its assist from; where there is no booster, in the first reservoir.
std::optional<double> shownVacuum_Pa(const Circuit& circuit, const Recording& recording, double time_s) {
    for (const char* const kind : {"booster", "reservoir"}) {
        for (const auto& [id, part] : circuit.parts) {
            const std::vector<PortSpec> ports =
                part.kind == kind ? kindOf(part).ports(part) : std::vector<PortSpec>();
            const Channel* channel = ports.empty() ? nullptr : recording.port({id, ports.front().name});
            if (channel != nullptr && !channel->times_s.empty()) {
                return channel->at(time_s);
            }
        }
    }
    return std::nullopt;
}

/// Where the vacuum switches close and open.
std::vector<double> setPoints_Pa(const Circuit& circuit) {
    std::vector<double> points;
    for (const auto& [id, part] : circuit.parts) {
        if (part.kind == "vacuum-switch") {
            const double closes_Pa = kindOf(part).value(part, "setPoint_Pa");
            points.push_back(closes_Pa);
            points.push_back(closes_Pa + kindOf(part).value(part, "differential_Pa"));
        }
    }
    return points;
}

bool hasChargingSource(const Circuit& circuit) {
    return std::any_of(circuit.parts.begin(), circuit.parts.end(), [](const auto& entry) {
        const auto source = kindOf(entry.second).features(entry.second).source;
        return source && source->chargeLimit_A > 0;
    });
}

QString timeText(double time_s) {
    return QStringLiteral("%1 s").arg(std::floor(time_s / kTimeStep_s) * kTimeStep_s, 0, 'f', 1);
}

} // namespace

HandPanel::HandPanel(Document& document, Analysis& analysis, HandOperation& operation,
                     const Preferences& preferences, QWidget* parent)
    : QWidget(parent), m_document(document), m_analysis(analysis), m_operation(operation),
      m_preferences(preferences), m_gauge(new VacuumGauge(this)), m_time(new QLabel(this)),
      m_begin(new QPushButton(this)), m_controls(new QWidget(this)), m_switches(new QVBoxLayout),
      m_pedal(new QPushButton(this)),
      m_force(new QuantityField(tr("Pedal force"), rangeOf(field::kPressForce), preferences.units(), this)),
      m_engine(new QCheckBox(tr("The engine runs and charges"), this)),
      m_keep(new QPushButton(tr("Keep as drive plan"), this)) {
    build();
    connectAll();
    rebuildSwitches();
    showTime();
    showControls();
}

void HandPanel::build() {
    m_time->setTextFormat(Qt::PlainText);
    m_time->setWordWrap(true);
    m_time->setAlignment(Qt::AlignCenter);
    m_pedal->setCheckable(true);
    m_pedal->setToolTip(tr("Pressed until you click again; on the canvas hold the pedal, or B"));
    m_keep->setToolTip(tr("Make what you did the circuit's drive plan, to see it on the Drive chart"));
    for (QPushButton* button : {m_begin, m_pedal, m_keep}) {
        button->setMinimumHeight(28);
        button->setAutoDefault(false);
    }
    m_force->showValue(m_operation.pedalForce_N());

    auto* controls = new QVBoxLayout(m_controls);
    controls->setContentsMargins(0, 0, 0, 0);
    controls->addLayout(m_switches);
    controls->addWidget(m_pedal);
    auto* forceLabel = new QLabel(tr("Pedal force"), m_controls);
    forceLabel->setBuddy(m_force);
    controls->addWidget(forceLabel);
    controls->addWidget(m_force);
    controls->addWidget(m_engine);
    controls->addWidget(m_keep);

    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus); // it follows the focus of what it holds
    scroll->setAccessibleName(tr("Controls"));
    auto* content = new QWidget(scroll);
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(8, 8, 8, 8);
    column->addWidget(m_gauge, 1);
    column->addWidget(m_time);
    column->addWidget(m_begin);
    column->addWidget(m_controls);
    scroll->setWidget(content);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scroll);
}

void HandPanel::connectAll() {
    connect(m_begin, &QPushButton::clicked, this, [this] { Q_EMIT requested(!m_operation.isOn()); });
    connect(m_pedal, &QPushButton::toggled, this,
            [this](bool down) { down ? m_operation.pressPedal() : m_operation.releasePedal(); });
    connect(m_force, &QuantityField::edited, &m_operation, &HandOperation::setPedalForce);
    connect(m_engine, &QCheckBox::toggled, &m_operation, &HandOperation::setCharging);
    connect(m_keep, &QPushButton::clicked, this, &HandPanel::keepAsPlan);
    connect(&m_operation, &HandOperation::moved, this, &HandPanel::showTime);
    connect(&m_operation, &HandOperation::operated, this, &HandPanel::showControls);
    connect(&m_operation, &HandOperation::onChanged, this, &HandPanel::showControls);
    connect(&m_analysis, &Analysis::driveChanged, this, &HandPanel::showTime);
    connect(&m_analysis, &Analysis::cursorMoved, this, &HandPanel::showTime);
    connect(&m_document, &Document::changed, this, [this] {
        rebuildSwitches();
        showControls();
    });
    connect(&m_preferences, &Preferences::changed, this,
            [this] { m_gauge->setUnits(m_preferences.units()); });
    m_gauge->setUnits(m_preferences.units());
}

/// One box for each hand switch, under the name of its part's id.
void HandPanel::rebuildSwitches() {
    while (QLayoutItem* item = m_switches->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const auto& [id, part] : m_document.circuit().parts) {
        if (controlOf(part) != Control::Switch) {
            continue;
        }
        QString name = shown(part.reference);
        if (!part.label.empty()) {
            name += QLatin1Char(' ') + shown(part.label);
        }
        name.replace(QLatin1Char('&'), QStringLiteral("&&"));
        auto* box = new QCheckBox(name, m_controls);
        box->setObjectName(QString::fromStdString(id.text));
        connect(box, &QCheckBox::toggled, this, [this, id](bool on) { m_operation.moveSwitch(id, on); });
        m_switches->addWidget(box);
    }
    m_gauge->setMarks(setPoints_Pa(m_document.circuit()));
    m_engine->setVisible(hasChargingSource(m_document.circuit()));
}

void HandPanel::showTime() {
    const Circuit& circuit = m_document.circuit();
    if (m_operation.isOn()) {
        const auto recent = m_operation.recent();
        m_gauge->showVacuum(recent ? shownVacuum_Pa(circuit, *recent, m_operation.time_s()) : std::nullopt);
        QString text = tr("By hand, for %1").arg(timeText(m_operation.time_s()));
        if (!m_operation.failure().isEmpty()) {
            text = m_operation.failure();
        } else if (m_operation.speed() < kKeepsUp) {
            text += tr(". This machine is too slow: the drive goes on at %1 % of real time.")
                        .arg(std::lround(100 * m_operation.speed()));
        }
        m_time->setText(text);
        return;
    }
    const auto drive = m_analysis.drive();
    const double cursor_s = m_analysis.cursor_s();
    const auto vacuum_Pa = drive ? shownVacuum_Pa(circuit, drive->recording, cursor_s) : std::nullopt;
    m_gauge->showVacuum(vacuum_Pa);
    m_time->setText(vacuum_Pa ? tr("The drive, at %1").arg(timeText(cursor_s))
                              : tr("There is no booster and no reservoir to measure."));
}

void HandPanel::showControls() {
    const bool on = m_operation.isOn();
    m_begin->setText(on ? tr("End") : tr("Try by hand"));
    m_begin->setToolTip(on ? tr("Back to drawing (Esc)")
                           : tr("Run the circuit in real time and operate it (F9)"));
    m_controls->setEnabled(on);
    m_pedal->setChecked(m_operation.isPedalPressed());
    m_pedal->setText(m_operation.isPedalPressed() ? tr("Release the pedal") : tr("Press the pedal"));
    m_engine->setChecked(m_operation.isCharging());
    for (const auto& [id, part] : m_document.circuit().parts) {
        if (auto* box = m_controls->findChild<QCheckBox*>(QString::fromStdString(id.text))) {
            box->setChecked(m_operation.isSwitchOn(id));
        }
    }
}

/// First to drawing, so that the edit finds nothing that runs.
void HandPanel::keepAsPlan() {
    DrivePlan plan = m_operation.plan();
    plan.name = m_document.circuit().plan.name;
    Q_EMIT requested(false);
    m_document.apply({tr("Keep what was done by hand as drive plan").toStdString(), {replacePlan(plan)}});
}

} // namespace pumpwright
