#pragma once

#include "app/desktop/panels/plan_list.h"

#include <QWidget>

class QCheckBox;
class QVBoxLayout;

namespace pumpwright {

class Document;
class Preferences;
class QuantityField;

/// Edits the drive plan: length, surroundings, and the lists of what happens.
class DrivePlanEditor final : public QWidget {
    Q_OBJECT

public:
    DrivePlanEditor(Document& document, const Preferences& preferences, QWidget* parent = nullptr);

    /// Above everything else.
    void addAtTop(QWidget* widget);

    QuantityField& duration() { return *m_duration; }
    QCheckBox& startsSteady() { return *m_startsSteady; }
    PlanList& presses() { return *m_presses; }
    PlanList& switchMoves() { return *m_switchMoves; }
    PlanList& charging() { return *m_charging; }
    PlanList& altitude() { return *m_altitude; }

private:
    QuantityField* addField(const QString& name, const QuantityRange& range, double DrivePlan::*member);
    QCheckBox* addSteadyStart();
    PlanList* addList(PlanTable table);
    void refresh();
    void apply(const DrivePlan& plan, const QString& editName);

    Document& m_document;
    const Preferences& m_preferences;
    int m_typing = 0;
    QVBoxLayout* m_column;
    QuantityField* m_duration;
    QuantityField* m_ambient;
    QuantityField* m_initialVacuum;
    QCheckBox* m_startsSteady;
    PlanList* m_presses;
    PlanList* m_switchMoves;
    PlanList* m_charging;
    PlanList* m_altitude;
};

} // namespace pumpwright
