#pragma once

#include "app/desktop/panels/findings_model.h"

#include <QWidget>

class QLabel;
class QListView;
class QScrollArea;

namespace pumpwright {

class Analysis;
class Document;
class FindingDetails;
class Preferences;
class Selection;

/// The list of findings with the details of the current one. Choosing a finding selects what it is about.
class FindingsPanel final : public QWidget {
    Q_OBJECT

public:
    FindingsPanel(Document& document, Selection& selection, Analysis& analysis,
                  const Preferences& preferences, QWidget* parent = nullptr);

    QListView& list() { return *m_list; }
    /// "3 findings: 1 DANGER, 2 CAUTION"
    QString summary() const;

Q_SIGNALS:
    /// The page of a rule is asked for.
    void pageChosen(const QString& rule);

private:
    void build();
    void takeFindings();
    void showCurrent();
    void selectSubjects();
    void addWaiver(const QString& reason, const QString& initials);
    void removeWaiver();
    const Finding* current() const;

    Document& m_document;
    Selection& m_selection;
    Analysis& m_analysis;
    const Preferences& m_preferences;
    bool m_taking = false; ///< the rows change because of a check, not because the user chose
    FindingsModel* m_model;
    QLabel* m_summary;
    QListView* m_list;
    QScrollArea* m_detailsArea; ///< hidden while no finding is chosen
    FindingDetails* m_details;
};

} // namespace pumpwright
