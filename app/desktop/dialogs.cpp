#include "app/desktop/dialogs.h"

#include "app/desktop/error_bar.h"
#include "app/desktop/panels/quantity_text.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>

namespace pumpwright {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("pumpwright", text);
}

} // namespace

QString placeText(const Place& place) {
    QStringList parts;
    if (!place.file.empty()) {
        parts << QFileInfo(shown(place.file)).fileName();
    }
    if (place.line > 0) {
        parts << tr("line %1").arg(place.line);
    }
    if (!place.pointer.empty()) {
        parts << shown(place.pointer);
    }
    return parts.join(QStringLiteral(", "));
}

QString ScreenDialogs::pathToOpen(const PathRequest& request) {
    return QFileDialog::getOpenFileName(&m_window, request.title, request.suggested, request.filter);
}

QString ScreenDialogs::pathToSave(const PathRequest& request) {
    QFileDialog dialog(&m_window, request.title, request.suggested, request.filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(request.suffix);
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString();
}

UnsavedAnswer ScreenDialogs::unsavedAnswer(const QString& fileName) {
    QMessageBox box(QMessageBox::Question, tr("Unsaved changes"),
                    tr("“%1” has changes that are not saved.").arg(fileName), QMessageBox::NoButton,
                    &m_window);
    box.setTextFormat(Qt::PlainText);
    const QPushButton* save = box.addButton(tr("Save"), QMessageBox::AcceptRole);
    const QPushButton* discard = box.addButton(tr("Discard the changes"), QMessageBox::DestructiveRole);
    box.addButton(tr("Stay here"), QMessageBox::RejectRole);
    box.exec();
    if (box.clickedButton() == save) {
        return UnsavedAnswer::Save;
    }
    return box.clickedButton() == discard ? UnsavedAnswer::Discard : UnsavedAnswer::Cancel;
}

void ScreenDialogs::showError(const QString& what, const Error& error) {
    m_errors.say(what, error);
}

} // namespace pumpwright
