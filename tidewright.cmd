@echo off
rem Starts Tidewright on Windows: what ./tidewright does elsewhere, in its simplest form.
rem Builds it first when a source is newer than the last build. Needs a JDK 17 or newer, and Maven 3.8 or newer for that.
rem   JAVA_HOME                the JDK to use, if it is not the one on the path
rem   TIDEWRIGHT_JAVA_OPTIONS  more options for Java, such as -Xmx2g
setlocal
set "root=%~dp0"
set "state=%root%target\launch"
set "log=%root%target\build.log"
set "java_options=-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xms16m -Xmx512m"

set "java=java.exe"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
if not exist "%state%" mkdir "%state%"
"%java%" -version 2> "%state%\java.txt"
if errorlevel 1 (
  echo Tidewright needs a JDK 17 or newer: none is on the path, or JAVA_HOME is wrong. 1>&2
  exit /b 1
)
set "version="
for /f "usebackq tokens=3" %%v in ("%state%\java.txt") do if not defined version set "version=%%~v"
set "major=0"
for /f "delims=.-+" %%m in ("%version%") do set "major=%%m"
if %major% lss 17 (
  echo Tidewright needs Java 17 or newer; this one is %version%. 1>&2
  exit /b 1
)

set "build="
if exist "%state%\current" for /f "usebackq delims=" %%b in ("%state%\current") do set "build=%state%\%%b"
if not defined build goto make
if not exist "%build%\tidewright.jar" goto make
rem Exit code 1: a source, or a folder of sources, is newer than the build.
powershell -NoProfile -Command "$built = (Get-Item -LiteralPath (Join-Path $env:build 'sources')).LastWriteTime; $places = @(Join-Path $env:root 'pom.xml') + @(Get-ChildItem -LiteralPath $env:root -Directory | Where-Object { $_.Name -notin 'testkit', 'trials', 'bench', 'target' } | ForEach-Object { (Join-Path $_.FullName 'pom.xml'), (Join-Path $_.FullName 'src\main') }); $newer = $places | Where-Object { Test-Path -LiteralPath $_ } | ForEach-Object { Get-Item -LiteralPath $_; Get-ChildItem -LiteralPath $_ -Recurse } | Where-Object { $_.LastWriteTime -gt $built } | Select-Object -First 1; exit [int]($null -ne $newer)"
if not errorlevel 1 goto run

:make
where mvn >nul 2>nul
if errorlevel 1 (
  echo Tidewright must be built, and there is no Maven on the path. Install Maven 3.8 or newer: https://maven.apache.org 1>&2
  exit /b 1
)
mkdir "%state%\lock" 2>nul
if errorlevel 1 (
  echo Another start is building Tidewright. If that is not so, remove "%state%\lock". 1>&2
  exit /b 1
)
echo Tidewright is being built (the first time about a minute, it fetches its libraries)... 1>&2
type nul > "%state%\sources"
if exist "%root%app\target\dist" rmdir /s /q "%root%app\target\dist"
pushd "%root%"
call mvn -B -Dstyle.color=never -Dquick -Dpacking.phase=process-classes process-classes -pl app,!testkit -am > "%log%" 2>&1
set "result=%errorlevel%"
popd
if not "%result%"=="0" (
  rmdir /s /q "%state%\lock"
  findstr /b /c:"[ERROR]" "%log%" 1>&2
  echo Tidewright could not be built. All that Maven said is in "%log%". 1>&2
  exit /b 1
)
set "name=build-%random%%random%"
set "build=%state%\%name%"
xcopy /e /i /q /y "%root%app\target\dist" "%build%" >nul
move /y "%state%\sources" "%build%\sources" >nul
"%java%" -XX:ArchiveClassesAtExit="%build%\classes.jsa" %java_options% -cp "%build%\tidewright.jar" org.tidewright.app.TrainingStart > "%state%\training.log" 2>&1
> "%state%\current" echo %name%
for /d %%d in ("%state%\build-*") do if /i not "%%~nxd"=="%name%" rmdir /s /q "%%d" 2>nul
rmdir /s /q "%state%\lock"

:run
"%java%" -XX:SharedArchiveFile="%build%\classes.jsa" -Xlog:disable -Xlog:all=error:stderr %java_options% %TIDEWRIGHT_JAVA_OPTIONS% -jar "%build%\tidewright.jar" %*
exit /b %errorlevel%
