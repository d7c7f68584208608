#pragma once

#include "core/circuit/drive_plan.h"
#include "core/units/result.h"

#include <QWidget>

class QComboBox;
class QPushButton;
class QSpinBox;

namespace pumpwright {

class Dialogs;
class Document;

/// Makes a whole drive plan: of a sort of drive and a seed, or from a speed trace. One step of the history.
class PlanMaker final : public QWidget {
    Q_OBJECT

public:
    PlanMaker(Document& document, Dialogs& dialogs, QWidget* parent = nullptr);

    QComboBox& sorts() { return *m_sorts; }
    QSpinBox& seed() { return *m_seed; }
    QPushButton& makeButton() { return *m_make; }
    QPushButton& traceButton() { return *m_trace; }

private:
    void make();
    void openTrace();
    void take(const Result<DrivePlan>& plan);

    Document& m_document;
    Dialogs& m_dialogs;
    QComboBox* m_sorts;
    QSpinBox* m_seed;
    QPushButton* m_make;
    QPushButton* m_trace;
};

} // namespace pumpwright
