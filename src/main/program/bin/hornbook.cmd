@echo off
rem Starts hornbook from wherever it lies, with the Java of JAVA_HOME or else of the path.
rem HORNBOOK_JAVA_OPTIONS: more options for Java.
setlocal EnableExtensions DisableDelayedExpansion

for %%i in ("%~dp0..") do set "home=%%~fi"
if not exist "%home%\lib\hornbook.jar" (
  >&2 echo hornbook: the program's own folder is not whole: lib\hornbook.jar is not where it should be
  >&2 echo   copy the whole folder again, with bin, lib, rules and cases
  exit /b 69
)

if defined JAVA_HOME (
  set "java=%JAVA_HOME%\bin\java.exe"
) else (
  set "java="
  for %%i in (java.exe) do set "java=%%~$PATH:i"
)
if not defined java (
  >&2 echo hornbook: Java is not installed
  >&2 echo   install Java 17 or newer, or set JAVA_HOME to its folder
  exit /b 69
)
if not exist "%java%" (
  >&2 echo hornbook: JAVA_HOME is %JAVA_HOME%, but there is no Java in it
  >&2 echo   set JAVA_HOME to the folder of a Java 17 or newer, or unset it
  exit /b 69
)

rem The version stands in a file beside Java: asking Java itself would cost a start.
set "version="
set "build="
for %%i in ("%java%\..\..") do set "of=%%~fi"
if exist "%of%\release" (
  for /f "usebackq tokens=1,* delims==" %%a in ("%of%\release") do (
    if "%%a"=="JAVA_VERSION" set "version=%%~b"
    if "%%a"=="JAVA_RUNTIME_VERSION" set "build=%%~b"
  )
)
if not defined version (
  for /f "tokens=3" %%v in ('""%java%" -version 2>&1" ^| findstr /c:" version "') do set "version=%%~v"
)
if not defined build set "build=%version%"
for /f "delims=.-+ tokens=1" %%m in ("%version%") do set "major=%%m"
if not defined major set "major=0"
if %major% LSS 17 (
  >&2 echo hornbook: this needs Java 17 or newer; %java% is Java %version%
  >&2 echo   install a newer Java, or set JAVA_HOME to the folder of one
  exit /b 69
)

set "JAVA_TOOL_OPTIONS="
set "JDK_JAVA_OPTIONS="
set "_JAVA_OPTIONS="
set "ending=jsa"
set "use=-XX:SharedArchiveFile"
if %major% GEQ 25 (
  set "ending=aot"
  set "use=-XX:AOTCache"
)
rem An archive that was written to after its note was, that is older than the program, or with
rem which Java came to grief, is left out. The folder is listed with the newest file first.
set "archive=%home%\lib\hornbook-%build%"
set "noted="
set "replaced="
set "sound="
for /f "delims=" %%f in ('dir /b /a-d /o-d "%home%\lib\hornbook*" 2^>nul') do (
  if /i "%%f"=="hornbook-%build%.of" set "noted=yes"
  if /i "%%f"=="hornbook.jar" set "replaced=yes"
  if /i "%%f"=="hornbook-%build%.%ending%" if defined noted if not defined replaced set "sound=yes"
)
if exist "%archive%.crash" set "sound="
set "quick="
if defined sound set quick="%use%=%archive%.%ending%" "-XX:ErrorFile=%archive%.crash"
rem A stream of many assessments is worth compiling well for; one is not.
set "options=java.options"
set collector="@%home%\lib\%ending%.options"
if "%~1"=="batch" (
  set "options=batch.options"
  set "collector="
)
"%java%" %quick% "@%home%\lib\%options%" %collector% %HORNBOOK_JAVA_OPTIONS% -cp "%home%\lib\hornbook.jar" "-Dhornbook.home=%home%" hornbook.cli.Hornbook %*
exit /b %ERRORLEVEL%
