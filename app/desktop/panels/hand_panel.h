#pragma once

#include <QWidget>

#include <vector>

class QCheckBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace pumpwright {

class Analysis;
class Document;
class HandOperation;
class Preferences;
class QuantityField;
class VacuumGauge;

/// The booster's vacuum on a dial: of the drive at the cursor, or, while the circuit is operated by hand, of
/// now. Below it every switch, the pedal and the engine, for those who would rather not aim at the canvas.
class HandPanel final : public QWidget {
    Q_OBJECT

public:
    HandPanel(Document& document, Analysis& analysis, HandOperation& operation,
              const Preferences& preferences, QWidget* parent = nullptr);

    VacuumGauge& gauge() { return *m_gauge; }

Q_SIGNALS:
    /// The user wants to begin or to end operating by hand.
    void requested(bool on);

private:
    void build();
    QWidget* buildPedal();
    void connectAll();
    void rebuildSwitches();
    void showTime();
    void showControls();
    void keepAsPlan();

    Document& m_document;
    Analysis& m_analysis;
    HandOperation& m_operation;
    const Preferences& m_preferences;
    VacuumGauge* m_gauge;
    QLabel* m_time;
    QPushButton* m_begin;
    QWidget* m_controls;
    QVBoxLayout* m_switches;
    QPushButton* m_pedal;
    QuantityField* m_force;
    QCheckBox* m_engine;
    QPushButton* m_keep;
};

} // namespace pumpwright
