#include "app/desktop/error_bar.h"

#include "app/desktop/dialogs.h"
#include "app/desktop/panels/quantity_text.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace pumpwright {

ErrorBar::ErrorBar(QWidget* parent) : QFrame(parent), m_what(new QLabel(this)), m_why(new QLabel(this)) {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("What went wrong"));
    for (QLabel* label : {m_what, m_why}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    QFont bold = m_what->font();
    bold.setBold(true);
    m_what->setFont(bold);
    auto* close = new QPushButton(tr("Put away"), this);
    close->setAccessibleName(tr("Put this message away"));
    close->setMinimumHeight(28);
    close->setAutoDefault(false);
    connect(close, &QPushButton::clicked, this, &QWidget::hide);
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_what);
    words->addWidget(m_why);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 4, 8, 4);
    row->addLayout(words, 1);
    row->addWidget(close, 0, Qt::AlignTop);
    hide();
}

void ErrorBar::say(const QString& what, const Error& error) {
    const QString place = placeText(error.place);
    QStringList lines{shown(error.text)};
    lines << (place.isEmpty()
                  ? tr("Message code: %1").arg(shown(errorCodeName(error.code)))
                  : tr("Place: %1. Message code: %2").arg(place, shown(errorCodeName(error.code))));
    m_what->setText(what);
    m_why->setText(lines.join(QLatin1Char('\n')));
    setAccessibleDescription(text());
    show();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

QString ErrorBar::text() const {
    return m_what->text() + QLatin1Char('\n') + m_why->text();
}

} // namespace pumpwright
