#include "app/desktop/twice_open_bar.h"

#include "app/desktop/document/document.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace pumpwright {

TwiceOpenBar::TwiceOpenBar(Document& document, const QString& claimsFolder, QWidget* parent)
    : QFrame(parent), m_document(document), m_claim(claimsFolder), m_text(new QLabel(this)) {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("File open twice"));
    m_text->setTextFormat(Qt::PlainText);
    m_text->setWordWrap(true);
    auto* understood = new QPushButton(tr("I know"), this);
    understood->setAccessibleName(tr("I know that the file is open twice"));
    understood->setMinimumHeight(28);
    understood->setAutoDefault(false);
    connect(understood, &QPushButton::clicked, this, &QWidget::hide);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 4, 8, 4);
    row->addWidget(m_text, 1);
    row->addWidget(understood);
    hide();
    connect(&document, &Document::fileChanged, this, &TwiceOpenBar::look);
    look();
}

void TwiceOpenBar::look() {
    if (m_document.path() == m_path) {
        return;
    }
    m_path = m_document.path();
    const bool alone = m_claim.claim(m_path);
    m_text->setText(tr("%1 is open in another window too. The one that saves last overwrites the other; "
                       "save this one under another name.")
                        .arg(QFileInfo(m_path).fileName()));
    setVisible(!alone);
}

} // namespace pumpwright
