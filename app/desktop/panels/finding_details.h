#pragma once

#include "app/desktop/panels/findings_model.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace pumpwright {

/// Everything that one finding carries, its remedies as buttons, and the form to waive it.
class FindingDetails final : public QWidget {
    Q_OBJECT

public:
    explicit FindingDetails(QWidget* parent = nullptr);

    void showFinding(const Finding* finding, const ShownUnits& units);
    /// While the circuit is newer than the findings, their remedies would bring old values back.
    void setObsolete(bool obsolete);

Q_SIGNALS:
    void remedyChosen(const pumpwright::Edit& edit);
    void instantChosen(double time_s);
    void pageChosen(const QString& rule); ///< the rule's page is to be read
    void waived(const QString& reason, const QString& initials);
    void waiverTakenBack();

private:
    void buildTexts(QVBoxLayout& column);
    void buildWaiverForm(QVBoxLayout& column);
    void showRemedies();
    void showWaiver();
    void openWaiverForm(bool open);
    void waive();

    std::optional<Finding> m_finding;
    bool m_obsolete = false;
    QLabel* m_heading;
    QLabel* m_what;
    QLabel* m_value;
    QLabel* m_why;
    QLabel* m_source;
    QPushButton* m_instant;
    QPushButton* m_page;
    QWidget* m_remedies;
    QLabel* m_waiver;
    QPushButton* m_openWaiver;
    QPushButton* m_takeBack;
    QWidget* m_waiverForm;
    QLineEdit* m_reason;
    QLineEdit* m_initials;
    QPushButton* m_waive;
};

} // namespace pumpwright
