#include "app/desktop/panels/finding_details.h"

#include "app/desktop/panels/applied_remedy.h"

#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

QLabel* addLabel(QVBoxLayout& column, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    column.addWidget(label);
    return label;
}

QPushButton* newButton(const QString& text, QWidget* parent) {
    auto* button = new QPushButton(text, parent);
    button->setMinimumHeight(26);
    button->setAutoDefault(false);
    return button;
}

} // namespace

FindingDetails::FindingDetails(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 8, 8);
    column->setSpacing(6);
    buildTexts(*column);
    buildWaiverForm(*column);
    column->addStretch(1);
}

void FindingDetails::buildTexts(QVBoxLayout& column) {
    m_heading = addLabel(column, this);
    QFont bold = m_heading->font();
    bold.setBold(true);
    m_heading->setFont(bold);
    m_what = addLabel(column, this);
    m_value = addLabel(column, this);
    m_why = addLabel(column, this);
    m_source = addLabel(column, this);
    m_instant = newButton({}, this);
    m_instant->setObjectName(QStringLiteral("showInstant"));
    column.addWidget(m_instant, 0, Qt::AlignLeft);
    m_page = newButton(tr("Read about this rule"), this);
    m_page->setObjectName(QStringLiteral("readAboutRule"));
    m_page->setToolTip(tr("What it looks at, its limit and where that comes from, with examples"));
    column.addWidget(m_page, 0, Qt::AlignLeft);
    m_remedies = new QWidget(this);
    column.addWidget(m_remedies);
    connect(m_instant, &QPushButton::clicked, this,
            [this] { Q_EMIT instantChosen(m_finding->at_s.value_or(0)); });
    connect(m_page, &QPushButton::clicked, this, [this] { Q_EMIT pageChosen(shown(m_finding->rule)); });
}

void FindingDetails::buildWaiverForm(QVBoxLayout& column) {
    m_waiver = addLabel(column, this);
    m_openWaiver = newButton(tr("Waive…"), this);
    m_openWaiver->setToolTip(tr("Accept this finding, with a reason that is printed on the wiring sheet"));
    m_openWaiver->setObjectName(QStringLiteral("openWaiver"));
    m_takeBack = newButton(tr("Take the waiver back"), this);
    m_takeBack->setObjectName(QStringLiteral("takeWaiverBack"));
    m_waiverForm = new QWidget(this);
    auto* form = new QFormLayout(m_waiverForm);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    m_reason = new QLineEdit(m_waiverForm);
    m_reason->setAccessibleName(tr("Reason of the waiver"));
    m_reason->setMaxLength(400);
    m_initials = new QLineEdit(m_waiverForm);
    m_initials->setAccessibleName(tr("Initials of who waives"));
    m_initials->setMaxLength(8);
    m_waive = newButton(tr("Waive"), m_waiverForm);
    m_waive->setObjectName(QStringLiteral("waive"));
    form->addRow(tr("Reason"), m_reason);
    form->addRow(tr("Initials"), m_initials);
    form->addRow(m_waive);
    column.addWidget(m_openWaiver, 0, Qt::AlignLeft);
    column.addWidget(m_takeBack, 0, Qt::AlignLeft);
    column.addWidget(m_waiverForm);
    openWaiverForm(false);

    const auto enableWaive = [this] {
        m_waive->setEnabled(!m_reason->text().trimmed().isEmpty() && !m_initials->text().trimmed().isEmpty());
    };
    enableWaive();
    connect(m_reason, &QLineEdit::textChanged, this, enableWaive);
    connect(m_initials, &QLineEdit::textChanged, this, enableWaive);
    connect(m_openWaiver, &QPushButton::clicked, this, [this] { openWaiverForm(true); });
    connect(m_takeBack, &QPushButton::clicked, this, &FindingDetails::waiverTakenBack);
    connect(m_waive, &QPushButton::clicked, this, &FindingDetails::waive);
}

void FindingDetails::showFinding(const Finding* finding, const ShownUnits& units) {
    const bool same = finding && m_finding && findingKey(*finding) == findingKey(*m_finding);
    m_finding = finding ? std::optional(*finding) : std::nullopt;
    setVisible(m_finding.has_value());
    if (!m_finding) {
        return;
    }
    if (!same) {
        openWaiverForm(false);
        m_reason->clear();
        m_initials->clear();
    }
    m_heading->setText(QStringLiteral("%1  %2").arg(translatedWords(signalWordName(m_finding->word)),
                                                    translatedWords(m_finding->title)));
    m_what->setText(translated(m_finding->what));
    m_value->setText(findingValueText(*m_finding, units));
    m_value->setVisible(!m_value->text().isEmpty());
    m_why->setText(tr("Why it matters: %1").arg(translated(m_finding->why)));
    m_source->setText(tr("Source of the limit: %1").arg(translatedWords(m_finding->source)));
    m_instant->setVisible(m_finding->at_s.has_value());
    if (m_finding->at_s) {
        m_instant->setText(
            tr("Show at %1 in the drive").arg(shown(formatQuantity(*m_finding->at_s, QuantityKind::Time))));
    }
    showRemedies();
    showWaiver();
}

void FindingDetails::setObsolete(bool obsolete) {
    m_obsolete = obsolete;
    m_remedies->setEnabled(!obsolete);
}

void FindingDetails::showRemedies() {
    // The old buttons may be the sender of the signal that led here.
    QWidget* old = m_remedies;
    m_remedies = new QWidget(this);
    m_remedies->setEnabled(!m_obsolete);
    auto* column = new QVBoxLayout(m_remedies);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    addLabel(*column, m_remedies)->setText(m_finding->remedies.size() == 1 ? tr("Remedy") : tr("Remedies"));
    for (const Remedy& remedy : m_finding->remedies) {
        const QString text = translated(remedy.text);
        addLabel(*column, m_remedies)->setText(QStringLiteral("• ") + text);
        if (remedy.edit) {
            QPushButton* button = newButton(tr("Apply this remedy"), m_remedies);
            button->setObjectName(QStringLiteral("applyRemedy"));
            button->setAccessibleName(tr("Apply: %1").arg(text));
            column->addWidget(button, 0, Qt::AlignLeft);
            connect(
                button, &QPushButton::clicked, this,
                [this, edit = Edit{stepName(remedy), remedy.edit->changes}] { Q_EMIT remedyChosen(edit); });
        }
    }
    delete layout()->replaceWidget(old, m_remedies);
    old->hide();
    old->deleteLater();
    m_remedies->show();
}

void FindingDetails::showWaiver() {
    const bool isWaived = m_finding->waiver.has_value();
    m_waiver->setVisible(isWaived);
    m_takeBack->setVisible(isWaived);
    m_openWaiver->setVisible(!isWaived && m_waiverForm->isHidden());
    if (isWaived) {
        openWaiverForm(false);
        m_openWaiver->setVisible(false);
        m_waiver->setText(
            tr("Waived by %1: %2").arg(shown(m_finding->waiver->initials), shown(m_finding->waiver->reason)));
    }
}

void FindingDetails::openWaiverForm(bool open) {
    m_waiverForm->setVisible(open);
    m_openWaiver->setVisible(!open);
    if (open) {
        m_reason->setFocus(Qt::OtherFocusReason);
    }
}

void FindingDetails::waive() {
    Q_EMIT waived(m_reason->text().trimmed(), m_initials->text().trimmed());
}

} // namespace pumpwright
