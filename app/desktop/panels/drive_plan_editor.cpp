#include "app/desktop/panels/drive_plan_editor.h"

#include "app/desktop/document/document.h"
#include "app/desktop/panels/plan_table_model.h"
#include "app/desktop/panels/quantity_field.h"
#include "app/desktop/preferences.h"
#include "core/parts/document_fields.h"

#include <QCheckBox>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace pumpwright {
DrivePlanEditor::DrivePlanEditor(Document& document, const Preferences& preferences, QWidget* parent)
    : QWidget(parent), m_document(document), m_preferences(preferences) {
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus); // it follows the focus of what it holds
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setAccessibleName(tr("Drive plan"));
    auto* content = new QWidget(scroll);
    m_column = new QVBoxLayout(content);
    m_column->setContentsMargins(8, 8, 8, 8);
    m_duration = addField(tr("Length of the drive"), rangeOf(field::kPlanDuration), &DrivePlan::duration_s);
    m_ambient = addField(tr("Air temperature"), rangeOf(field::kPlanAmbient), &DrivePlan::ambient_K);
    m_initialVacuum =
        addField(tr("Vacuum at the start"), rangeOf(field::kInitialVacuum), &DrivePlan::initialVacuum_Pa);
    m_startsSteady = addSteadyStart();
    m_presses = addList(pressTable());
    m_switchMoves = addList(switchMoveTable(document.circuit()));
    m_charging = addList(chargingTable());
    m_altitude = addList(altitudeTable());
    m_column->addStretch(1);
    scroll->setWidget(content);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scroll);

    connect(&document, &Document::changed, this, [this](const ChangedObjects& changed) {
        if (changed.plan || changed.all || !changed.parts.empty()) {
            refresh();
        }
    });
    connect(&preferences, &Preferences::changed, this, [this] {
        for (QuantityField* field : {m_duration, m_ambient, m_initialVacuum}) {
            field->setUnits(m_preferences.units());
        }
    });
    refresh();
}

void DrivePlanEditor::addAtTop(QWidget* widget) {
    m_column->insertWidget(0, widget);
}

QuantityField* DrivePlanEditor::addField(const QString& name, const QuantityRange& range,
                                         double DrivePlan::*member) {
    auto* label = new QLabel(name, this);
    auto* field = new QuantityField(name, range, m_preferences.units(), this);
    label->setBuddy(field);
    m_column->addWidget(label);
    m_column->addWidget(field);
    connect(field, &QuantityField::edited, this, [this, member, name](double si) {
        DrivePlan plan = m_document.circuit().plan;
        plan.*member = si;
        m_document.applyMerging(
            {tr("Set %1").arg(name.toLower()).toStdString(), {replacePlan(std::move(plan))}},
            QStringLiteral("plan/%1/%2").arg(name).arg(m_typing));
    });
    connect(field, &QuantityField::finished, this, [this] { ++m_typing; });
    return field;
}

QCheckBox* DrivePlanEditor::addSteadyStart() {
    auto* box = new QCheckBox(tr("Starts steady"), this);
    box->setToolTip(
        tr("As after ten minutes of the first instant: booster evacuated, wires warm. Else the vehicle "
           "has stood, with the vacuum above."));
    m_column->addWidget(box);
    connect(box, &QCheckBox::clicked, this, [this](bool steady) {
        DrivePlan plan = m_document.circuit().plan;
        plan.startsSteady = steady;
        apply(plan, steady ? tr("Start the drive steady") : tr("Start the drive at rest"));
    });
    return box;
}

PlanList* DrivePlanEditor::addList(PlanTable table) {
    auto* list = new PlanList(std::move(table), m_preferences.units(), this);
    m_column->addSpacing(8);
    m_column->addWidget(list);
    connect(list, &PlanList::planEdited, this, &DrivePlanEditor::apply);
    return list;
}

void DrivePlanEditor::refresh() {
    const DrivePlan& plan = m_document.circuit().plan;
    m_duration->showValue(plan.duration_s);
    m_ambient->showValue(plan.ambient_K);
    m_initialVacuum->showValue(plan.initialVacuum_Pa);
    m_startsSteady->setChecked(plan.startsSteady);
    m_switchMoves->model().setTable(switchMoveTable(m_document.circuit()));
    for (PlanList* list : {m_presses, m_switchMoves, m_charging, m_altitude}) {
        list->setPlan(plan);
    }
}

void DrivePlanEditor::apply(const DrivePlan& plan, const QString& editName) {
    m_document.apply({editName.toStdString(), {replacePlan(plan)}});
}

} // namespace pumpwright
