#pragma once

#include "core/units/result.h"

#include <QString>

class QWidget;

namespace pumpwright {

class ErrorBar;

enum class UnsavedAnswer { Save, Discard, Cancel };

/// What to ask for: the words of a file dialog.
struct PathRequest {
    QString title;
    QString filter;    ///< "Circuits (*.pumpwright)"
    QString suffix;    ///< added where the user gives none
    QString suggested; ///< path or name
};

/// Every question and message that stops the user. In one place, so that all look and read the same.
class Dialogs {
public:
    virtual ~Dialogs() = default;

    /// Empty where the user gave up.
    virtual QString pathToOpen(const PathRequest& request) = 0;
    virtual QString pathToSave(const PathRequest& request) = 0;
    virtual UnsavedAnswer unsavedAnswer(const QString& fileName) = 0;
    /// `what` failed; what is wrong, where, and what is next follow from the error.
    virtual void showError(const QString& what, const Error& error) = 0;
};

/// The same on the screen, over the given window.
class ScreenDialogs final : public Dialogs {
public:
    ScreenDialogs(QWidget& window, ErrorBar& errors) : m_window(window), m_errors(errors) {}

    QString pathToOpen(const PathRequest& request) override;
    QString pathToSave(const PathRequest& request) override;
    UnsavedAnswer unsavedAnswer(const QString& fileName) override;
    void showError(const QString& what, const Error& error) override;

private:
    QWidget& m_window;
    ErrorBar& m_errors;
};

/// "van.pumpwright, line 12, /parts/p3/kind", as far as it is known.
QString placeText(const Place& place);

} // namespace pumpwright
