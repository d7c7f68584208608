#pragma once

#include "core/sheet/bill.h"

#include <QWidget>

#include <optional>
#include <string>

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

private:
    void build();
    void fillStepMenu(QMenu& menu);
    void takeCurrent();
    void removeCurrent();
    void updateEnabled();
    std::optional<std::string> current() const;

    Document& m_document;
    TrialsModel* m_model;
    QTableView* m_list;
    QPushButton* m_make;
    QPushButton* m_take;
    QPushButton* m_remove;
    StudyPage* m_study;
};

} // namespace pumpwright
