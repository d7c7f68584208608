#include "app/desktop/lost_work_bar.h"

#include "app/desktop/dialogs.h"
#include "app/desktop/document/document.h"
#include "app/desktop/file_actions.h"

#include <QFile>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>

namespace pumpwright {

LostWorkBar::LostWorkBar(Document& document, FileActions& files, Dialogs& dialogs, const QString& folder,
                         QWidget* parent)
    : QFrame(parent), m_document(document), m_files(files), m_dialogs(dialogs), m_folder(folder),
      m_work(lostWork(folder)), m_text(new QLabel(this)) {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Unsaved work"));
    m_text->setTextFormat(Qt::PlainText);
    m_text->setWordWrap(true);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 4, 8, 4);
    row->addWidget(m_text, 1);
    const auto addButton = [&](const QString& text, void (LostWorkBar::*act)()) {
        auto* button = new QPushButton(text, this);
        button->setMinimumHeight(28);
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, act);
        row->addWidget(button);
    };
    addButton(tr("Open it"), &LostWorkBar::open);
    addButton(tr("Throw it away"), &LostWorkBar::throwAway);
    offerNext();
}

void LostWorkBar::offerNext() {
    m_work.removeIf([](const LostWork& work) { return !QFile::exists(work.file); }); // another window took it
    setVisible(!m_work.isEmpty());
    if (!m_work.isEmpty()) {
        const LostWork& work = m_work.front();
        const QString name =
            work.origin.isEmpty() ? tr("a circuit without a name") : QFileInfo(work.origin).fileName();
        m_text->setText(tr("Pumpwright did not end well. Work on %1 of %2 was not saved, but is still here.")
                            .arg(name, QLocale().toString(work.at, QLocale::ShortFormat)));
    }
}

void LostWorkBar::open() {
    if (!m_files.mayLeave()) {
        return;
    }
    offerNext();
    if (m_work.isEmpty()) {
        return;
    }
    const LostWork work = m_work.takeFirst();
    if (const Result<RecoveredWork> recovered = recover(work)) {
        m_document.restore(recovered->circuit, work.origin);
        // Its own snapshot follows within the second; the old file must not outlive it.
        QTimer::singleShot(2000, this, [file = recovered->triedFile, origin = work.origin] {
            discard({file, origin, {}});
        });
    } else {
        m_dialogs.showError(tr("The unsaved work can't be opened."), recovered.error());
    }
    offerNext();
}

void LostWorkBar::throwAway() {
    discard(m_work.takeFirst());
    offerNext();
}

} // namespace pumpwright
