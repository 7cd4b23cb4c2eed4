@echo off
rem Starts Fencerow from the folder this script's parent is. Needs a JDK or JRE 17 or newer: JAVA_HOME's, or else
rem the one on the path. FENCEROW_JAVA_OPTS is handed on to it, such as -Dfencerow.window=1280x720.
setlocal
for %%I in ("%~dp0..") do set "FENCEROW_HOME=%%~fI"
set "FENCEROW_JAVA=java"
if defined JAVA_HOME set "FENCEROW_JAVA=%JAVA_HOME%\bin\java"
rem A command is over before the optimizing compiler pays for itself; the kiosk is not.
set "FENCEROW_QUICK="
if not "%~1"=="" if /i not "%~1"=="kiosk" set "FENCEROW_QUICK=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
"%FENCEROW_JAVA%" %FENCEROW_QUICK% -Dfile.encoding=UTF-8 -Djava.awt.headless=true "-Dfencerow.home=%FENCEROW_HOME%" ^
    %FENCEROW_JAVA_OPTS% -p "%FENCEROW_HOME%\lib\javafx" --add-modules javafx.controls ^
    -cp "%FENCEROW_HOME%\lib\*" fencerow.Main %*
exit /b %ERRORLEVEL%
