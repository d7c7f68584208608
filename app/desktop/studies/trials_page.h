#pragma once

#include "app/desktop/chart/chart_lanes.h"
#include "app/desktop/studies/handed_over.h"
#include "core/sheet/bill.h"
#include "core/study/trials.h"

#include <QWidget>

#include <memory>
#include <optional>
#include <string>

class QCheckBox;
class QMenu;
class QPushButton;
class QTableView;

namespace pumpwright {

class Document;
class StudyPage;
class TrialsModel;

/// The trials of the circuit, and what each of them comes to beside the circuit as it is drawn. A trial is
/// made of the last steps of the history, and taken into the circuit as one step.
class TrialsPage final : public QWidget {
    Q_OBJECT

public:
    TrialsPage(Document& document, const PriceList& prices, QWidget* parent = nullptr);

    QTableView& list() { return *m_list; }
    StudyPage& study() { return *m_study; }
    QPushButton& takeButton() { return *m_take; }
    QPushButton& removeButton() { return *m_remove; }
    QCheckBox& overlay() { return *m_overlay; }

Q_SIGNALS:
    /// What is to be laid over the drive chart; nothing of an empty list.
    void tracesShown(const std::vector<pumpwright::OverlayTrace>& traces);

private:
    void build();
    void fillStepMenu(QMenu& menu);
    void takeCurrent();
    void removeCurrent();
    void updateEnabled();
    void showTraces();
    std::optional<std::string> current() const;

    Document& m_document;
    TrialsModel* m_model;
    QTableView* m_list;
    QPushButton* m_make;
    QPushButton* m_take;
    QPushButton* m_remove;
    QCheckBox* m_overlay;
    std::shared_ptr<HandedOver<std::vector<TrialOutcome>>> m_found; ///< of the run that was begun last
    StudyPage* m_study;
};

} // namespace pumpwright
